/** Italian texts of the hand-off without a network. */
import type { handOff as english } from "../english/hand-off.ts";
import type { Said } from "../spoken.ts";
import { entriesText } from "./plural.ts";

export const handOff: Said<typeof english> = {
  link: "Passa i dati senza rete",
  title: "Passa i dati senza rete",
  hint: "Con i codici: un dispositivo li mostra sullo schermo, l’altro li legge con la fotocamera. Con un file: un dispositivo lo salva, l’altro lo riceve, via cavo, chiavetta o come due telefoni si passano i file. Non si sovrascrive niente: quello che due persone hanno regolato separatamente risulta in disaccordo.",
  codesNotLoaded: "Il passaggio con i codici non si è potuto caricare dal server. Passa i dati con un file.",
  back: "Indietro",
  save: {
    title: "Da questo dispositivo",
    action: "Salva tutto in un file",
    byCodes: "Passa i dati con i codici",
    share: "Condividi il file",
    busy: "Preparo il file…",
    done: (name: string, entries: number) => `${name} è pronto, con ${entriesText(entries)}.`,
    incomplete:
      "Alcuni documenti più vecchi di questo dispositivo non si sono potuti leggere, o non ci stavano: nel file non ci sono.",
    where: "Si trova dove questo browser mette i download.",
    holds: "Nel file",
    whoFirst: "Prima di’ chi ha questo dispositivo. Solo allora ha aperte le voci dei piloti.",
    who: "Chi sei?",
    team: "Team, bici, basi e weekend",
    document: (name: string, entries: number) => `${name}: ${entriesText(entries)}`,
    rider: (name: string, year: number) => `${name}, ${year}`,
    notShared: "Il file non è stato condiviso. Si può ancora salvare qui.",
  },
  takeIn: {
    title: "Su questo dispositivo",
    action: "Ricevi un file",
    byCodes: "Ricevi i dati con i codici",
    ending: (ending: string) => `Un file il cui nome finisce in ${ending}`,
    reading: "Leggo il file…",
    unreadable: "Questo dispositivo non è riuscito ad aprire il file. Sceglilo un’altra volta.",
    madeBy: (moment: string, name: string | undefined) =>
      name === undefined ? `Creato ${moment}` : `Creato da ${name}, ${moment}`,
    holds: (entries: number) => `Contiene ${entriesText(entries)}`,
    fresh: (entries: number) => `Qui nuove: ${entriesText(entries)}`,
    whose: (name: string, entries: number) => `${name}: ${entriesText(entries)}`,
    span: (first: string, last: string) => (first === last ? `Scritto ${first}` : `Scritto tra ${first} e ${last}`),
    nothingNew: "Niente di nuovo: questo dispositivo ha già tutto quello che contiene.",
    merge: "Unisci",
    leave: "Lascia stare",
    merging: "Unisco…",
    merged: (entries: number) =>
      entries === 1
        ? "Unito: 1 voce nuova è su questo dispositivo."
        : `Unito: ${entries} voci nuove sono su questo dispositivo.`,
    notSaved: (entries: number) =>
      `Unito: ${entries === 1 ? "1 voce nuova" : `${entries} voci nuove`}, ma su questo dispositivo non ancora salvato. Tieni aperta questa pagina.`,
    onward: "Vanno al server quando è raggiungibile.",
  },
};
