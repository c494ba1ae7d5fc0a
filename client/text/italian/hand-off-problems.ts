/** Italian texts of why something is not handed over, or not taken in. */
import type { handOffProblems as english } from "../english/hand-off-problems.ts";
import type { Said } from "../spoken.ts";

export const handOffProblems: Said<typeof english> = {
  foreign: "Questo non è un file di Pitslate per passare i dati, oppure il suo inizio è danneggiato.",
  newerVersion: {
    file: "Questo file viene da una versione più nuova di Pitslate. Prima porta questo dispositivo a quella versione, poi ricevi il file.",
    codes:
      "Questi codici vengono da una versione più nuova di Pitslate. Prima porta questo dispositivo a quella versione, poi leggili.",
  },
  tooLarge: {
    device: "Su questo dispositivo c’è più di quanto sta in un file.",
    file: "Questo file è più grande di quanto questo dispositivo può ricevere.",
  },
  tooMuchForCodes: "È più di quanto i codici portano in pochi minuti. Passa i dati con un file.",
  damaged: {
    file: "Questo file è danneggiato o incompleto. Fattelo dare un’altra volta.",
    contents: "In questo file non c’è quello che dice la sua prima riga. Fattelo dare un’altra volta.",
    codes: "Questi codici non si leggono. Fai rispondere di nuovo l’altro dispositivo.",
  },
  unknownDocument: {
    file: "Nel file c’è qualcosa che non è né del team né di un pilota.",
    codes: "Nei codici c’è qualcosa che non è né del team né di un pilota.",
  },
  refusedDocument: (document: string, reason: string) => `Una parte (${document}) non si può ricevere. ${reason}`,
  reasons: {
    "too large": "È più grande di quanto un dispositivo può ricevere.",
    undecodable: "È danneggiata e non si legge.",
    removes: "Toglie delle voci; le voci si possono solo aggiungere.",
    "not records": "Contiene qualcosa che non è un elenco di voci.",
    elsewhere: "Aggiunge qualcosa fuori dall’elenco delle voci.",
    gap: "Si appoggia a voci precedenti che non sono arrivate; prima bisogna passare quelle.",
    tangled: "Mette troppe voci negli stessi posti; riordinarle richiederebbe troppo tempo.",
    contradicts: "È in contrasto con voci che qui hanno gli stessi numeri.",
    "bad record": "Una voce al suo interno è danneggiata.",
    "other version":
      "Una voce al suo interno è stata scritta da un’altra versione di Pitslate. Prima porta questo dispositivo a quella versione.",
  },
  anotherTeam:
    "Questo file è di un altro team: su questo dispositivo non si conosce niente di quel team. Non è stato ricevuto niente.",
  anotherDevice:
    "Questi codici rispondono a un altro dispositivo. Fai leggere all’altro quello che ha questo, e fallo rispondere di nuovo.",
  answers: {
    damaged: "Quello che ha l’altro dispositivo non si legge. Fagli mostrare di nuovo il suo codice.",
    "another team": "Sull’altro dispositivo c’è un altro team. Non si passa niente.",
    "nothing here": "Su questo dispositivo non c’è ancora un team, quindi non c’è niente da passare.",
    "nothing new": "L’altro dispositivo ha già tutto quello che vuole da questo.",
    differs:
      "I due dispositivi hanno voci diverse sotto gli stessi numeri. Solo il server può chiarirlo: collegali tutti e due.",
  },
  codes: {
    unreadable: {
      foreign: "Questo codice non è di quelli con cui Pitslate passa i dati.",
      damaged: "Questo codice non è stato letto bene; viene lasciato fuori.",
      "newer version":
        "Questo codice viene da una versione più nuova di Pitslate. Prima porta questo dispositivo a quella versione, poi leggilo.",
    },
    unwanted: {
      holdings:
        "Questo codice dice che cosa ha l’altro dispositivo. L’altro dispositivo deve invece mostrare la sua risposta.",
      answer: "Questo codice è una risposta. L’altro dispositivo deve invece mostrare che cosa ha.",
      file: "Questo codice viene da tutto quello che ha l’altro dispositivo, che deve invece mostrare solo che cosa ha.",
    },
    anotherHandOff:
      "Questo codice è di un altro passaggio di dati, non di quello letto per primo; viene lasciato fuori. Per leggerlo, ferma la fotocamera e riavviala.",
    noFit: "I codici non vanno insieme. La lettura ricomincia dal primo.",
  },
};
