import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of damage, sag, travel and spring feel say. */
export const springWords: Readonly<Record<string, RuleWords>> = {
  knocks: {
    reason: "Klopfen ist Spiel oder ein loses Teil, und keine Einstellung behebt es.",
    notice: "Nichts, bevor es gefunden ist.",
    otherwise:
      "Nicht weiterfahren: Steuersatz, Buchsen, Lager, Schrauben und Laufrad prüfen und einen Fachmechaniker urteilen lassen.",
  },
  "oil-on-the-shaft": {
    reason: "Öl, das außen ist, fehlt innen: Eine Dichtung oder die Dämpfung gibt auf.",
    notice: "Nichts, bevor es im Service war.",
    otherwise: "Die Einstellungen aufschreiben und das Teil in den Service geben, bevor es wieder hart gefahren wird.",
  },
  "loses-air": {
    reason: "Eine Kammer, die Luft verliert, hat keine Einstellung: Was heute eingestellt wird, ist morgen weg.",
    notice: "Nichts, bevor sie den Druck hält.",
    otherwise:
      "Den ersten Wert der Pumpe mit dem erwarteten vergleichen; ist er zu niedrig, Ventil und Dichtungen prüfen oder das Teil in den Service geben.",
  },
  "rim-strikes": {
    reason: "Die Felge schlägt durch den Reifen: mehr Druck, bevor Felge oder Reifen verloren sind.",
    notice: "Steine schlagen nicht mehr auf die Felge.",
    otherwise: "Felge auf Dellen prüfen und die Linie ansehen; eine festere Karkasse kann, was Druck nicht kann.",
  },
  "rim-strikes-and-slides": {
    reason:
      "Die Felge schlägt auf und das Rad rutscht: Beides kann der Reifen nicht geben, also zuerst die Felge, und Grip aus der Feder.",
    notice: "Steine schlagen nicht mehr auf die Felge; der Grip kommt mit der nächsten Änderung.",
    otherwise: "Ein anderes Profil oder eine festere Karkasse gibt die Antwort, die Druck nicht gibt.",
  },
  "worn-damper": {
    reason:
      "Der Sag stimmt, und doch zu schnell und durch den Federweg: Die Dämpfung tut weniger, als ihre Klicks sagen.",
    notice: "Nichts, bevor sie im Service war.",
    otherwise: "Nach den Servicestunden schauen; altes oder schäumendes Öl fühlt sich genau so an.",
  },
  sticks: {
    reason: "Der Sag stimmt, am Anfang hart und nie am Ende: Unterwegs klemmt es.",
    notice: "Nichts, bevor danach geschaut ist.",
    otherwise: "Dichtungen reinigen und ölen, Buchsen und Ausrichtung prüfen, nach den Stunden des Schmieröls schauen.",
  },
  "sag-above-target": {
    reason: "Es steht zu tief im Federweg: erst den Sag richten, dann alles, was später im Hub kommt.",
    notice: "Es steht höher und hat mehr Federweg in Reserve.",
    otherwise:
      "Den Sag noch einmal messen, in Bewegung und in Ruhe; eine Feder, die ihren Sag nicht hält, verliert vielleicht Luft.",
  },
  "sag-below-target": {
    reason: "Es steht zu hoch im Federweg: erst den Sag richten, dann alles, was später im Hub kommt.",
    notice: "Es folgt kleinen Schlägen besser und das Rad bleibt am Boden.",
    otherwise: "Auf Reibung prüfen: Ein Teil, das klemmt, zeigt weniger Sag, als seine Feder hat.",
  },
  "soft-all-along": {
    reason:
      "Es taucht in der Mitte ab und nutzt den ganzen Federweg: durchgehend weich, also die Hauptfeder und nicht ihr Ende.",
    notice: "Es steht in Kurven und beim Bremsen höher und behält Federweg für die großen Schläge.",
    otherwise: "Dann die Zweitkammer oder ein Spacer.",
  },
  "full-travel-too-easily": {
    reason: "Der ganze Federweg wird zu oft genutzt, obwohl der Sag stimmt: zuerst mehr Halt spät im Hub.",
    notice: "Große Schläge erreichen das Ende nicht mehr; der Anfang fühlt sich an wie vorher.",
    otherwise: "Dann den Hauptkammerdruck erhöhen; danach mehr High-Speed-Druckstufe.",
  },
  "end-hits-hard": {
    reason: "Das Ende des Hubs kommt zu hart: mehr Halt kurz davor.",
    notice: "Der letzte Teil des Hubs kommt sanfter.",
    otherwise: "Den Endanschlag prüfen, und ob der Reifen Rahmen oder Gabelkrone berührt.",
  },
  "firm-start-soft-end": {
    reason:
      "Am Anfang hart und am Ende ein harter Anschlag: Die Feder muss zuerst weicher und zuletzt straffer werden.",
    notice: "Das Ende kommt sanfter; den Anfang löst die Änderung danach.",
    otherwise: "Wenn das Ende hält, den Hauptkammerdruck für den Anfang um einen Schritt senken.",
  },
  "firm-all-along": {
    reason: "In der Mitte hart und nie am Ende: durchgehend straff, also zuerst die Hauptfeder.",
    notice: "Kantige Schläge sind runder und der Messring wandert weiter.",
    otherwise: "Dann weniger Zweitkammerdruck oder ein Spacer weniger.",
  },
  "travel-never-used": {
    reason: "Der Sag stimmt, und Schläge, die den Federweg nutzen sollten, tun es nicht: weniger Halt spät im Hub.",
    notice: "Große Schläge gehen tiefer und sind an Händen und Füßen weniger zu spüren.",
    otherwise: "Dann den Hauptkammerdruck senken; ein Teil, das spät im Hub klemmt, gehört in den Service.",
  },
  "soft-start-firm-end": {
    reason: "Am Anfang weich und nie am Ende: Die Feder steigt unterwegs zu stark an.",
    notice: "Der Federweg wird gleichmäßiger genutzt.",
    otherwise: "Wenn das Ende erreicht wird, den Hauptkammerdruck für den Anfang um einen Schritt erhöhen.",
  },
  "end-never-reached": {
    reason: "Der Fahrer sagt, dass das Ende des Hubs nie erreicht wird: dort einen kleinen Schritt weniger Halt.",
    notice: "Harte Landungen nutzen etwas mehr vom Federweg.",
    otherwise: "Im nächsten Lauf den genutzten Federweg mit dem Messring messen, bevor es weitergeht.",
  },
  "start-harsh": {
    reason: "Kleine Schläge kommen durch: den Anfang des Hubs freier machen.",
    notice: "Rattern und kleine Steine sind weniger zu spüren.",
    otherwise: "Trockene Dichtungen und überfälliges Schmieröl fühlen sich genau so an: nach dem Service schauen.",
  },
  "start-too-soft": {
    reason: "Es gibt sofort nach und fühlt sich schwammig an: etwas mehr Halt am Anfang.",
    notice: "Es steht höher beim Drücken und Treten.",
    otherwise: "Den Sag messen; was sich weich anfühlt, steht vielleicht zu tief.",
  },
};
