/** Italian texts of what the rider said, and of changes reported by the rider. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";

export const reported: Said<typeof english.reported> = {
  title: "Segnalato dal pilota",
  hint: "Cambiato in pista. Guarda la bici, poi conferma.",
  confirm: (value: string) => `Conferma: sulla bici c’è ${value}`,
  other: "Imposta un altro valore",
  confirmed: (adjuster: string, value: string) => `Confermato: ${adjuster} ${value}`,
};

export const feedback: Said<typeof english.feedback> = {
  title: "Feedback",
  none: "In questo weekend non c’è ancora nessuna run di questo pilota.",
  run: (session: string, time: string) => `${session}, inserita ${time}`,
  lap: (time: string) => `Tempo ${time}`,
  confidence: { low: "Fiducia bassa", fair: "Fiducia discreta", high: "Fiducia alta" },
  ends: { front: "Anteriore", rear: "Posteriore" },
  nothing: "niente detto",
  sag: "Sag",
  travelUsed: "Escursione usata",
  bottomOuts: "Fondo corsa",
  start: "Inizio",
  middle: "Metà",
  end: "Fine",
  returnSpeed: "Ritorno",
  grip: "Grip",
  noticed: "Notato",
  note: "Nota",
  undecided: "Da trattare",
  adjusted: "Trattato: corretto",
  left: "Trattato: lasciato com’è",
  disputed: "In disaccordo: trattato in due modi",
  changed: (adjuster: string, from: string, to: string) => `${adjuster}: ${from} → ${to}`,
  leave: "Lascia com’è",
  leftDone: "Lasciato com’è",
  byHand: "Imposta un altro valore",
  show: "Che cosa ha detto il pilota",
};
