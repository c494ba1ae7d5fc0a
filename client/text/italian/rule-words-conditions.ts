/** Why ground and course ask for something, by the rule's id. */
export const conditionWords: Readonly<Record<string, string>> = {
  "ground-wet-tyres": "Terreno bagnato: con un po’ meno pressione nelle gomme i tasselli ci entrano.",
  "ground-wet-main": "Terreno scivoloso: un po’ meno pressione principale tiene la ruota a terra.",
  "ground-damp-tyres": "Terreno umido: mezzo passo percepibile in meno nelle gomme, per il grip.",
  "ground-dust-main": "Terreno molto secco e smosso: un po’ meno pressione principale, per il grip.",
  "ground-dust-front-tyre":
    "Polvere smossa su terreno duro: mezzo passo percepibile in meno nella gomma anteriore, per il grip.",
  "ground-mud-secondary":
    "Il fango è lento e i suoi colpi sono morbidi: meno pressione secondaria, perché l’escursione si usi.",
  "ground-wet-secondary": "Una pista bagnata si fa più piano e picchia meno: un po’ meno pressione secondaria.",
  "ground-damp-main": "Sull’umido scivola prima l’anteriore: mezzo passo percepibile in meno nella forcella.",
  "ground-wet-rear-low-speed":
    "Sul terreno scivoloso il posteriore resta a contatto con un po’ meno compressione basse velocità.",
  "cold-oil": "L’olio freddo è più denso e frena di più: apri l’idraulica di un passo percepibile.",
  "style-calm":
    "Un pilota tranquillo e statico carica meno la bici: meno pressione secondaria, e un po’ meno pressione principale.",
  "style-hard":
    "Un pilota che pompa e salta forte carica di più la bici: più pressione principale e più pressione secondaria.",
  "no-baseline-steep":
    "Tratti ripidi senza base propria: più pressione secondaria, e una forcella più sostenuta perché non affondi.",
  "no-baseline-jumpy": "Tratti con salti senza base propria: più pressione secondaria per gli atterraggi.",
  "no-baseline-wet": "Tratti bagnati senza base propria: un po’ meno pressione dappertutto, per il grip.",
};
