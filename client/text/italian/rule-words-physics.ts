/** What the corrections by physics say. */
export const physicsWords: Readonly<
  Record<string, { readonly when: string; readonly move: string; readonly reason: string }>
> = {
  "own-baseline": {
    when: "la pista è di un solo tipo, per il quale il pilota ha una base",
    move: "prendere la base così com’è",
    reason: "L’assetto che il pilota sa buono è la miglior partenza che ci sia.",
  },
  blend: {
    when: "la pista mescola più tipi",
    move: "mescolare le basi del pilota secondo quanta parte della pista è di ogni tipo",
    reason: "Tra due assetti che si sanno buoni ce n’è uno buono.",
  },
  "rider-mass": {
    when: "la massa del pilota è diversa da quella della base",
    move: "pressione principale, o durezza della molla, in modo che il sag resti",
    reason: "Lo stesso sag tiene la bici nella parte di escursione che il pilota conosce.",
  },
  altitude: {
    when: "l’altitudine è diversa da quella della base",
    move: "pressione principale, in modo che il sostegno verso fine corsa resti",
    reason: "L’aria più rarefatta intorno alla molla rende meno progressiva la stessa pressione letta.",
  },
  "rebound-follows": {
    when: "la durezza della molla al sag è cambiata quanto vale un clic o più",
    move: "ritorno, di quanti clic tengono il rapporto di smorzamento della base",
    reason: "Una molla più dura vuole più freno in ritorno, una più morbida meno.",
  },
  temperature: {
    when: "al banco fa più freddo o più caldo che alla sessione",
    move: "ogni pressione, con la legge dei gas a volume costante, in modo che sia giusta alla sessione",
    reason: "Una pressione regolata al fresco del mattino si legge più alta nel caldo della gara.",
  },
};
