/**
 * Italian texts that all workplaces share. Words of the trade, one word a thing, in all parts; the reader is "tu":
 *
 * - adjuster, setting: regolazione; setup: assetto (the setup sheet: scheda assetto); adjustment: correzione
 * - baseline: base (f.), of a kind of course: base per pista ripida; to approve, to send back: approvare, rimandare
 * - course (the track): pista (f.), so its types are feminine: ripida, con salti, bagnata; ground: terreno (m.)
 * - pit, bench: box, banco; session: sessione; practice, qualifying, race: prove, qualifica, gara
 * - run: run (f.); rider, mechanic, manager: pilota, meccanico, team manager; plate: numero; venue: località
 * - fork, shock, damper, tyre, rim: forcella, ammortizzatore, idraulica, gomma, cerchio
 * - main, secondary pressure, volume spacer: pressione principale, pressione secondaria, spaziatore (di volume)
 * - spring rate, preload, collar: durezza della molla, precarico, ghiera; chamber: camera
 * - rebound, low-speed and high-speed compression: ritorno, compressione basse velocità, compressione alte velocità
 * - travel (of the wheel), stroke (of a part): escursione, corsa; sag: sag; to bottom out: andare a fondo corsa
 * - open, closed, click, turn: aperto, chiuso, clic, giro; berm: sponda; lip: rampa; felt step: passo percepibile
 * - feedback: feedback; changelog: storico; reason: motivo; limit: limite; advice: consigli; job: lavoro
 * - in dispute: in disaccordo; to settle: chiarire; to confirm: confermare; reported: segnalato
 * - service, due, overdue: revisione, da fare, scaduta; bath oil: olio di lubrificazione
 * - entry: voce; device: dispositivo; server: server; hand over, take in: passare, ricevere; from a file: importare
 */
import type { common as english } from "../english/common.ts";
import type { Said } from "../spoken.ts";
import { chosen, entriesText, plural } from "./plural.ts";

export const common: Said<typeof english> = {
  name: "Pitslate",
  loading: "Leggo la copia su questo dispositivo…",
  loadingScreen: "Apro la schermata…",
  notLoaded:
    "Questa schermata non si è potuta caricare dal server. Quello che è su questo dispositivo è al sicuro. Riprova quando il server è raggiungibile.",
  fault:
    "Questa schermata ha un difetto e non può andare avanti. Quello che era salvato è al sicuro. Riaprila, oppure torna all’inizio.",
  again: "Riprova",
  toStart: "All’inizio",
  back: "Indietro",
  language: "Lingua",
  find: "Cerca",
  units: {
    title: "Unità di misura",
    hint: "Su questo dispositivo leggi e scrivi in queste unità. Senza una scelta, un valore resta nell’unità in cui è stato scritto.",
    of: { pressure: "Pressione", mass: "Massa", temperature: "Temperatura" },
  },
  save: "Salva",
  cancel: "Lascia stare",
  close: "Chiudi",
  undo: "Annulla",
  more: "Un passo in più",
  less: "Un passo in meno",
  notKnown: "ignoto",
  theme: { sun: "Sole", dark: "Scuro", switchTo: (name: string) => `Cambia schermo: ${name.toLowerCase()}` },
  update: {
    waiting: "È pronta una nuova versione di Pitslate. Prima finisci quello che stai scrivendo.",
    take: "Usala adesso",
  },
  whoAreYou: {
    title: "Chi sei?",
    hint: "Quello che scrivi porta il tuo nome. Puoi cambiarlo in qualsiasi momento.",
    none: "Su questo dispositivo non c’è ancora un team. Arriva dal computer del box appena è raggiungibile.",
    change: "Cambia",
    holder: (name: string) => `Questo dispositivo è in mano a ${name}`,
  },
  roles: { mechanic: "Meccanico", rider: "Pilota", manager: "Team manager" },
  workplaces: { mechanic: "Box", rider: "Bordo pista", manager: "Analisi" },
  courseTypes: { steep: "ripida", jumpy: "con salti", wet: "bagnata" },
  grounds: {
    "dry dust": "secco e polveroso",
    dry: "secco",
    damp: "umido",
    wet: "bagnato",
    mud: "fangoso",
  },
  places: {
    fork: "Forcella",
    shock: "Ammortizzatore",
    "front-tyre": "Gomma anteriore",
    "rear-tyre": "Gomma posteriore",
  },
  adjusters: {
    "main-pressure": "Pressione principale",
    "secondary-pressure": "Pressione secondaria",
    "volume-spacers": "Spaziatori di volume",
    "spring-rate": "Durezza della molla",
    preload: "Precarico",
    rebound: "Ritorno",
    "low-speed-compression": "Compressione basse velocità",
    "high-speed-compression": "Compressione alte velocità",
    "tyre-pressure": "Pressione",
  },
  adjusterAt: (place: string, adjuster: string) => `${place}, ${adjuster.toLowerCase()}`,
  caution: "Attenzione.",
  counts: {
    clicks: () => "clic",
    turns: (value: number) => chosen(value, "giro", "giri"),
    spacers: (value: number) => chosen(value, "spaziatore", "spaziatori"),
  },
  stepper: {
    allowed: (minimum: string, maximum: string) => `da ${minimum} a ${maximum}`,
    outside: (label: string, value: string, allowed: string) =>
      `${label}: ${value} è fuori dal campo ammesso, ${allowed}.`,
    noNumber: (label: string, typed: string, allowed: string) =>
      `${label}: «${typed}» non è un numero. Ammesso: ${allowed}.`,
  },
  status: {
    loading: "Leggo la copia su questo dispositivo",
    onServer: "Sul server",
    onThisDevice: (waiting: number) =>
      waiting === 0
        ? "Su questo dispositivo. Chiedo al server che cosa ha"
        : `Solo su questo dispositivo: ${entriesText(waiting)} non ancora sul server`,
    offline: (since: string, waiting: number) =>
      waiting === 0
        ? `Offline dalle ${since}. Tutto il tuo è sul server`
        : `Offline dalle ${since}. ${entriesText(waiting)} solo su questo dispositivo`,
    saving: "Salvo su questo dispositivo",
    notSaved: (waiting: number) =>
      waiting === 0
        ? "Non salvato su questo dispositivo, ma sul server"
        : `Non salvato su questo dispositivo: tieni aperta questa pagina. ${entriesText(waiting)} per ora in nessun altro posto`,
    unreadable: (count: number) => `${entriesText(count)} che questa versione non sa leggere`,
  },
  holding: {
    unnamed: (count: number) => plural(count, "dispositivo senza nome", "dispositivi senza nome"),
    sentence: (where: { here: boolean; server: boolean; with: string | undefined }) => {
      const own = where.here ? "" : "Non salvato su questo dispositivo. ";
      if (where.server)
        return `${own}Sul server${where.with ? `, e da ${where.with}` : "; ancora su nessun altro dispositivo"}.`;
      return where.with
        ? `${own}Non ancora sul server; da ${where.with}.`
        : `${own}${where.here ? "Solo su questo dispositivo." : "Per ora in nessun altro posto."}`;
    },
  },
};
