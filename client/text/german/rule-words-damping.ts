import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of the middle of the stroke and of damping say. */
export const dampingWords: Readonly<Record<string, RuleWords>> = {
  "fork-dives": {
    reason: "Sie taucht in der Mitte des Hubs ab: dort mehr Halt.",
    notice: "Sie steht in Anliegern und in steilen Teilen höher.",
    otherwise: "Nach dem Heck schauen: Steht es zu hoch, schiebt es das Gewicht auf die Gabel.",
  },
  "dives-under-braking": {
    reason: "Die Gabel taucht ab, wenn gebremst wird: gegen den langsamen Schub des Gewichts stützen.",
    notice: "Die Front bleibt vor steilen Kurven höher, und die Arme haben weniger zu tun.",
    otherwise: "Nach dem Heck schauen: Federt es beim Bremsen hoch, wirft es das Gewicht nach vorne.",
  },
  "shock-wallows": {
    reason: "Es sinkt in der Mitte des Hubs ein: dort mehr Halt.",
    notice: "Es hält beim Drücken dagegen und treibt vom Absprung weg.",
    otherwise: "Vorne und hinten vergleichen: Ein Heck, das weicher ist als die Front, sackt mit jeder Dämpfung.",
  },
  "sinks-in-berms": {
    reason: "Das Heck sackt unter dem langen Druck eines Anliegers weg: erst die langsame Dämpfung, dann mehr Feder.",
    notice: "Es hält im Anlieger seine Höhe und kommt mit Tempo heraus.",
    otherwise: "Den Sag mit dem Fahrer in Rennausrüstung prüfen; vielleicht ist er größer geworden.",
  },
  "middle-harsh": {
    reason: "Kantige Schläge kommen in der Mitte des Hubs durch: Die Dämpfung soll früher nachgeben.",
    notice: "Wurzeln und Steine sind runder.",
    otherwise: "Auf ein zu langsames Ausfedern achten: Kommt es nicht mehr hoch, ist jeder Schlag hart.",
  },
  "hands-go-numb": {
    reason: "Taube Hände sind schnelle, harte Schläge bis zum Lenker: Dämpfung und Reifen sollen sie schlucken.",
    notice: "Die Hände halten den Lauf durch.",
    otherwise: "Auch Griffe, Lenker und Bremshebel zählen; Taubheit, die bleibt, gehört zum Arzt.",
  },
  "bounces-off-stones": {
    reason: "Steine werfen das Rad aus der Linie: Es muss schneller nachgeben.",
    notice: "Das Rad rollt über Steine, statt zur Seite geschlagen zu werden.",
    otherwise: "Ein Reifen, der zu hart für seine Karkasse ist, springt mit jeder Dämpfung.",
  },
  "packs-down": {
    reason: "Es sackt sich fest: Vor dem nächsten Schlag ist es nicht zurück und wird Schlag für Schlag härter.",
    notice: "Wurzelfelder werden zu ihrem Ende hin nicht mehr härter.",
    otherwise: "Noch ein Schritt; danach weniger Druckstufe.",
  },
  "harsher-hit-by-hit": {
    reason: "Es wird Schlag für Schlag härter: Vor dem nächsten ist es nicht zurück.",
    notice: "Wurzelfelder werden zu ihrem Ende hin nicht mehr härter.",
    otherwise: "Wenn Öffnen nichts bewirkt, braucht die Dämpfung einen Service.",
  },
  "returns-too-slowly": {
    reason: "Es federt zu langsam aus und hat für den nächsten Schlag keinen Federweg: Zugstufe öffnen.",
    notice: "Vor dem nächsten Schlag ist es wieder oben.",
    otherwise: "Wenn Öffnen nichts bewirkt, braucht die Dämpfung einen Service.",
  },
  "returns-too-fast": {
    reason: "Es federt zu schnell aus und wirft das Rad oder den Fahrer: Zugstufe schließen.",
    notice: "Nach Landungen bleibt es ruhig.",
    otherwise: "Wenn Schließen nichts bewirkt, braucht die Dämpfung einen Service.",
  },
  "kicks-back-off-lips": {
    reason: "Es wirft den Fahrer vom Absprung: Was der Absprung hineindrückt, kommt zu schnell zurück.",
    notice: "Absprünge sind eben, und das Bike kommt mit, statt zu überholen.",
    otherwise: "Die beiden Enden vergleichen: Ist eines viel schneller als das andere, dreht es das Bike in der Luft.",
  },
  "bounces-and-returns-fast": {
    reason:
      "Es springt von Steinen ab und federt zu schnell aus: erst das Ausfedern bremsen, dann den Schlag weicher machen.",
    notice: "Nach einem Stein bleibt das Rad am Boden.",
    otherwise: "Dann die High-Speed-Druckstufe öffnen.",
  },
  "skips-under-braking": {
    reason: "Das Heck stempelt über Bremswellen: Es muss ihnen so schnell folgen, wie sie abfallen.",
    notice: "Das Hinterrad bremst, statt zu stempeln.",
    otherwise: "Hinten weniger oder früher bremsen; ein blockiertes Rad stempelt mit jeder Dämpfung.",
  },
  "hangs-back": {
    reason: "Das Heck bleibt in Löchern und am Kurvenausgang hängen: Es kommt zu spät zurück, um Tempo mitzunehmen.",
    notice: "Es nimmt Tempo durch ruppige Teile mit.",
    otherwise: "Den Sag messen: Auch ein Heck, das zu tief steht, bleibt hängen.",
  },
};
