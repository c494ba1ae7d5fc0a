/** German texts of why something is not handed over, or not taken in. */
import type { handOffProblems as model } from "../english/hand-off-problems.ts";
import type { Said } from "../spoken.ts";

export const handOffProblems: Said<typeof model> = {
  foreign: "Das ist keine Übergabe-Datei von Pitslate, oder ihr Anfang ist beschädigt.",
  newerVersion: {
    file: "Diese Datei hat eine neuere Version von Pitslate erstellt. Bring erst dieses Gerät auf diese Version, dann lies die Datei ein.",
    codes:
      "Diese Codes hat eine neuere Version von Pitslate erstellt. Bring erst dieses Gerät auf diese Version, dann lies sie.",
  },
  tooLarge: {
    device: "Auf diesem Gerät ist mehr, als in eine Datei passt.",
    file: "Diese Datei ist größer als jede Übergabe-Datei, die dieses Gerät einlesen kann.",
  },
  tooMuchForCodes: "Das ist mehr, als Codes in ein paar Minuten übertragen. Übergib es als Datei.",
  damaged: {
    file: "Diese Datei ist beschädigt oder abgeschnitten. Lass sie dir noch einmal geben.",
    contents: "In dieser Datei ist nicht das, was ihre erste Zeile sagt. Lass sie dir noch einmal geben.",
    codes: "Diese Codes sind nicht lesbar. Lass das andere Gerät neu antworten.",
  },
  unknownDocument: {
    file: "In der Datei ist etwas, das weder zum Team noch zu einem Fahrer gehört.",
    codes: "In den Codes ist etwas, das weder zum Team noch zu einem Fahrer gehört.",
  },
  refusedDocument: (document: string, reason: string) =>
    `Ein Teil davon (${document}) lässt sich nicht einlesen. ${reason}`,
  reasons: {
    "too large": "Er ist größer, als ein Gerät einlesen kann.",
    undecodable: "Er ist beschädigt und nicht lesbar.",
    removes: "Er entfernt Einträge; es können nur welche dazukommen.",
    "not records": "Darin ist etwas, das keine Liste von Einträgen ist.",
    elsewhere: "Er fügt etwas außerhalb der Liste der Einträge hinzu.",
    gap: "Er baut auf früheren Einträgen auf, die noch nicht da sind; die müssen zuerst übergeben werden.",
    tangled: "Er setzt zu viele Einträge an dieselben Stellen; das Sortieren würde zu lange dauern.",
    contradicts: "Er widerspricht Einträgen, die hier unter denselben Nummern stehen.",
    "bad record": "Ein Eintrag darin ist beschädigt.",
    "other version":
      "Einen Eintrag darin hat eine andere Version von Pitslate geschrieben. Bring erst dieses Gerät auf diese Version.",
  },
  anotherTeam:
    "Diese Datei ist von einem anderen Team: Nichts aus ihrem Team ist auf diesem Gerät bekannt. Nichts wurde eingelesen.",
  anotherDevice:
    "Diese Codes antworten einem anderen Gerät. Lass das andere Gerät lesen, was dieses hat, und neu antworten.",
  answers: {
    damaged: "Was das andere Gerät hat, ist nicht lesbar. Lass es seinen Code neu zeigen.",
    "another team": "Auf dem anderen Gerät ist ein anderes Team. Nichts wird übergeben.",
    "nothing here": "Auf diesem Gerät ist noch kein Team, also gibt es nichts zu übergeben.",
    "nothing new": "Das andere Gerät hat alles, was es von diesem will.",
    differs:
      "Die beiden Geräte haben verschiedene Einträge unter denselben Nummern. Das kann nur der Server klären: Verbinde beide.",
  },
  codes: {
    unreadable: {
      foreign: "Dieser Code gehört nicht zu einer Übergabe von Pitslate.",
      damaged: "Dieser Code wurde nicht sauber gelesen; er bleibt weg.",
      "newer version":
        "Diesen Code hat eine neuere Version von Pitslate erstellt. Bring erst dieses Gerät auf diese Version, dann lies ihn.",
    },
    unwanted: {
      holdings: "Dieser Code sagt, was das andere Gerät hat. Das andere Gerät muss stattdessen seine Antwort zeigen.",
      answer: "Dieser Code ist eine Antwort. Das andere Gerät muss stattdessen zeigen, was es hat.",
      file: "Dieser Code ist von allem, was auf dem anderen Gerät ist. Es muss stattdessen zeigen, was es hat.",
    },
    anotherHandOff:
      "Dieser Code gehört zu einer anderen Übergabe als der zuerst gelesene; er bleibt weg. Um ihn zu lesen, schalte die Kamera aus und wieder ein.",
    noFit: "Die Codes passen nicht zusammen. Das Lesen beginnt wieder von vorn.",
  },
};
