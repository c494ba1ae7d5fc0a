/** Italian texts of the hand-off by codes. */
import type { handOffCodes as english } from "../english/hand-off-codes.ts";
import type { Said } from "../spoken.ts";

export const handOffCodes: Said<typeof english> = {
  send: {
    title: "Passa i dati con i codici",
    readFirst: "1. Leggi che cosa ha l’altro dispositivo",
    how: "Sull’altro dispositivo scegli «Ricevi i dati con i codici». Mostra un codice: puntaci la fotocamera di questo.",
    showNext: "2. Fai leggere questo all’altro dispositivo",
    answer: (entries: number) =>
      entries === 1 ? "1 voce è nuova per l’altro dispositivo." : `${entries} voci sono nuove per l’altro dispositivo.`,
    again: "Leggi un altro dispositivo",
    everything: "Mostra tutto",
    everythingHow:
      "Se questo dispositivo non ha una fotocamera, può mostrare tutto quello che ha: ci vogliono più codici.",
    everythingShown: "Tutto quello che è su questo dispositivo. Una parte l’altro forse ce l’ha già.",
  },
  receive: {
    title: "Ricevi i dati con i codici",
    showFirst: "1. Fai leggere questo all’altro dispositivo",
    how: "Sull’altro dispositivo scegli «Passa i dati con i codici» e fai leggere questo codice alla sua fotocamera.",
    nobody: "Nessuno ha ancora detto chi ha questo dispositivo. Le voci dei piloti arrivano quando è detto.",
    readNext: "2. Leggi la risposta",
    readHow: "L’altro dispositivo mostra la sua risposta: puntaci la fotocamera di questo.",
    next: "L’ha letto: leggi la risposta",
    back: "Mostra di nuovo il codice",
    onward: "Adesso nell’altro verso",
  },
  preparing: "Preparo il codice…",
  code: {
    one: "Codice con tutto",
    name: (number: number) => `Codice ${number}`,
    several: (needed: number, duration: string) =>
      `Ci vogliono circa ${needed} codici, ${duration}. Non importa quali si leggono e quali si perdono.`,
    pause: "Ferma",
    play: "Continua",
    next: "Codice successivo",
    seconds: (seconds: number) => `${seconds} secondi o più`,
    minutes: (minutes: number) => (minutes === 1 ? "1 minuto o più" : `${minutes} minuti o più`),
  },
  camera: {
    start: "Leggi con la fotocamera",
    stop: "Ferma la fotocamera",
    starting: "Avvio la fotocamera…",
    view: "Che cosa vede la fotocamera",
    looking: "Ancora nessun codice in vista. Tieni fermo il codice, in modo che riempia quasi tutta l’immagine.",
    progress: (read: number, needed: number) => `Codici letti: ${read} su circa ${needed}`,
    insecure:
      "Un browser dà la fotocamera solo a pagine arrivate con https o da questa macchina. Questa no: passa i dati con un file.",
    none: "Questo dispositivo non ha una fotocamera che il browser possa usare. Passa i dati con un file.",
    refused:
      "La fotocamera non è stata permessa. Permettila per questa pagina nelle impostazioni del browser, oppure passa i dati con un file.",
    failed: "La fotocamera non parte; forse la usa un altro programma. Riprova, oppure passa i dati con un file.",
    noReader: "Il lettore di codici non si è potuto caricare. Riprova, oppure passa i dati con un file.",
  },
};
