/** Italian texts of the data that goes out and comes in. */
import type { data as english } from "../english/data.ts";
import type { Said } from "../spoken.ts";
import { entriesText, plural } from "./plural.ts";

export const data: Said<typeof english> = {
  link: "Esporta e importa dati",
  title: "Esporta e importa dati",
  forWhom: "Solo un meccanico o un team manager esporta e importa dati.",
  who: "Chi sei?",
  back: { mechanic: "Al box", manager: "All’analisi" },
  saved: (name: string) => `${name} è pronto. Si trova dove questo browser mette i download.`,
  file: {
    tooLarge: (bytes: number, most: number) =>
      `Questo file ha ${megabytes(bytes)} MB; se ne leggono al massimo ${megabytes(most)} MB. Importalo diviso in più file.`,
    unreadable: "Questo dispositivo non è riuscito ad aprire il file. Sceglilo un’altra volta.",
    notText:
      "Questo file non è testo in UTF-8. Salvalo come UTF-8 (un foglio di calcolo lo offre insieme al CSV) e sceglilo di nuovo.",
    quotes: (line: number) =>
      `Riga ${line}: si aprono delle virgolette che non si chiudono come vuole il CSV. Salva di nuovo la tabella come CSV.`,
    noTable: "In questo file non c’è una tabella: serve una riga con i nomi delle colonne, e sotto altre righe.",
    reading: "Leggo il file…",
    writing: "Scrivo…",
    notLoaded: "Il programma per le tabelle non si è potuto caricare dal server. Riprova quando è raggiungibile.",
  },
  team: {
    title: "Tutti i dati del team",
    hint: "Un file JSON con tutto quello che vale adesso: persone, bici, componenti, basi, weekend, regolazioni, run. Un file così lo possono scrivere anche altri.",
    schema: "La forma del file (JSON Schema)",
    save: "Salva tutto in JSON",
    take: "Importa un file JSON",
  },
  tables: {
    title: "Tabelle per un foglio di calcolo",
    which: "Tabella",
    names: {
      riders: "Piloti",
      baselines: "Basi",
      settings: "Regolazioni sulle bici",
      changelog: "Storico (solo esportazione)",
      runs: "Run (solo esportazione)",
    },
    form: "Il foglio di calcolo scrive",
    forms: { point: "62.5, virgole tra le celle", comma: "62,5; punti e virgola tra le celle" },
    save: "Salva in CSV",
    take: "Importa un file CSV",
    hint: "Piloti, basi o regolazioni: lo dice la prima riga. Le regolazioni importate valgono come montate adesso sulla bici, nel weekend scelto qui.",
    weekend: "Weekend",
  },
  times: {
    title: "Tempi delle run",
    hint: "Dal file CSV di un sistema di cronometraggio. Un tempo va alla run del pilota che non ne ha ancora uno, oppure crea una run con il solo tempo. Quello che è stato detto di una run non cambia.",
    take: "Scegli un file con i tempi",
    weekend: "Weekend",
    session: "Sessione",
    columns: "Che cosa dice ogni colonna",
    column: { plate: "Numero", name: "Nome", time: "Tempo", session: "Sessione" },
    none: "nessuna colonna",
    sessionHint: "Se nessuna colonna dice la sessione, vale quella scelta sopra.",
    unnamed: (number: number) => `Colonna ${number}`,
    needs: "Scegli la colonna del tempo, e quella del numero o del nome.",
    look: "Mostra che cosa cambierebbe",
    tooMany: (most: number) => `Questa tabella ha più di ${most} righe; importala divisa in più file.`,
  },
  preview: {
    title: (name: string) => `Che cosa cambierebbe ${name}`,
    counts: (fresh: number, changes: number, same: number, refused: number) =>
      `${plural(fresh, "nuova", "nuove")}, ${plural(changes, "modifica", "modifiche")}, ${plural(same, "uguale", "uguali")}, ${plural(refused, "rifiutata", "rifiutate")}`,
    nothing: "Non cambierebbe niente: tutto quello che si può importare è già così.",
    refused: "Rifiutate",
    changes: "Modifiche",
    fresh: "Nuove",
    difference: (field: string, from: string | undefined, to: string | undefined) =>
      `${field}: ${from ?? "niente"} → ${to ?? "niente"}`,
    take: "Importa",
    takeGood: (count: number) => (count === 1 ? "Importa quella buona" : `Importa le ${count} buone`),
    leave: "Lascia stare",
    more: (count: number) => (count === 1 ? "Mostrane 1 altra" : `Mostrane altre ${count}`),
    line: (place: string, sentence: string) => `${place}: ${sentence}`,
  },
  note: (name: string) => `Dal file ${name}`,
  done: (count: number) => `Importate: ${entriesText(count)}.`,
  moved: "Mentre guardavi, qui qualcosa è cambiato. Ecco che cosa cambierebbe adesso il file.",
  undo: "Annulla tutto il file",
  undone: (count: number, kept: number) =>
    `Annullate: ${entriesText(count)}.${kept > 0 ? ` ${kept} da allora ${kept === 1 ? "è cambiata di nuovo, e resta" : "sono cambiate di nuovo, e restano"}.` : ""}`,
};

function megabytes(bytes: number): number {
  return Math.ceil(bytes / 1_000_000);
}
