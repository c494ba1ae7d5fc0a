/** What is asked where symptoms exclude each other, by the rule's id. */
export const questionWords: Readonly<Record<string, string>> = {
  "bottoms-and-never-reaches":
    "È stato detto che usa tutta l’escursione e che non raggiunge mai la fine. Quale colpo l’ha usata tutta, e quale avrebbe dovuto?",
  "bottoms-with-travel-left":
    "Sono stati contati dei fondo corsa, ma l’anellino mostra escursione avanzata. L’anellino era stato riportato a zero prima della run?",
  "end-hits-hard-with-travel-left":
    "La fine è sembrata picchiare forte, ma l’anellino mostra escursione avanzata. Che cosa ha picchiato forte?",
  "soft-and-too-little-sag":
    "All’inizio sembra troppo morbido, ma sta troppo alto. Il sag è stato misurato in posizione di guida, con tutta l’attrezzatura addosso?",
  "fast-and-packs-down":
    "È stato detto che torna troppo in fretta e che s’indurisce colpo dopo colpo. In quale parte della pista l’una e l’altra cosa?",
  "fast-and-hangs-back":
    "È stato detto che torna troppo in fretta e che s’impunta nelle buche. In quale parte della pista l’una e l’altra cosa?",
  "kicks-and-returns-slowly":
    "Scalcia sulle rampe, ma torna troppo piano. È l’idraulica, o una rampa presa troppo forte?",
  "squirms-and-bounces":
    "La gomma si piega in curva e rimbalza sui sassi. Quale delle due cose costa di più su questa pista?",
};
