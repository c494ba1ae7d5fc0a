/** French texts of why something is not handed over, or not taken in. */
import type { handOffProblems as english } from "../english/hand-off-problems.ts";
import type { Said } from "../spoken.ts";

export const handOffProblems: Said<typeof english> = {
  foreign: "Ce n’est pas un fichier de transmission de Pitslate, ou son début est abîmé.",
  newerVersion: {
    file: "Ce fichier vient d’une version plus récente de Pitslate. Mets d’abord cet appareil à cette version, puis reçois le fichier.",
    codes:
      "Ces codes viennent d’une version plus récente de Pitslate. Mets d’abord cet appareil à cette version, puis lis-les.",
  },
  tooLarge: {
    device: "Il y a plus sur cet appareil que ce qui tient dans un fichier.",
    file: "Ce fichier est plus gros que tout fichier de transmission que cet appareil peut recevoir.",
  },
  tooMuchForCodes: "C’est plus que ce que des codes peuvent porter en quelques minutes. Transmets par fichier.",
  damaged: {
    file: "Ce fichier est abîmé ou coupé. Redemande-le.",
    contents: "Ce fichier ne contient pas ce que dit sa première ligne. Redemande-le.",
    codes: "Ces codes sont illisibles. Fais répondre l’autre appareil une nouvelle fois.",
  },
  unknownDocument: {
    file: "Le fichier contient quelque chose qui n’est ni à l’équipe ni à un pilote.",
    codes: "Les codes contiennent quelque chose qui n’est ni à l’équipe ni à un pilote.",
  },
  refusedDocument: (document: string, reason: string) => `Une partie (${document}) ne peut pas être reçue. ${reason}`,
  reasons: {
    "too large": "Elle est plus grosse que ce qu’un appareil peut recevoir.",
    undecodable: "Elle est abîmée et illisible.",
    removes: "Elle retire des saisies ; on ne peut qu’en ajouter.",
    "not records": "Elle contient autre chose qu’une liste de saisies.",
    elsewhere: "Elle ajoute quelque chose en dehors de la liste des saisies.",
    gap: "Elle s’appuie sur des saisies antérieures qui ne sont pas arrivées ; il faut d’abord les transmettre.",
    tangled: "Elle met trop de saisies aux mêmes places ; le tri prendrait trop de temps.",
    contradicts: "Elle contredit des saisies qui sont ici sous les mêmes numéros.",
    "bad record": "Une des saisies est abîmée.",
    "other version":
      "Une des saisies a été écrite par une autre version de Pitslate. Mets d’abord cet appareil à cette version.",
  },
  anotherTeam:
    "Ce fichier est d’une autre équipe : rien de son équipe n’est connu sur cet appareil. Rien n’a été reçu.",
  anotherDevice:
    "Ces codes répondent à un autre appareil. Fais lire à l’autre appareil ce que celui-ci a, et qu’il réponde à nouveau.",
  answers: {
    damaged: "Ce que l’autre appareil a est illisible. Fais-lui remontrer son code.",
    "another team": "L’autre appareil contient une autre équipe. Rien n’est transmis.",
    "nothing here": "Il n’y a pas encore d’équipe sur cet appareil, donc rien à transmettre.",
    "nothing new": "L’autre appareil a déjà tout ce qu’il veut de celui-ci.",
    differs:
      "Les deux appareils ont des saisies différentes sous les mêmes numéros. Seul le serveur peut trancher : connecte les deux.",
  },
  codes: {
    unreadable: {
      foreign: "Ce code n’est pas d’une transmission de Pitslate.",
      damaged: "Ce code a été mal lu ; il est laissé de côté.",
      "newer version":
        "Ce code vient d’une version plus récente de Pitslate. Mets d’abord cet appareil à cette version, puis lis-le.",
    },
    unwanted: {
      holdings: "Ce code dit ce que l’autre appareil a. L’autre appareil doit plutôt montrer sa réponse.",
      answer: "Ce code est une réponse. L’autre appareil doit plutôt montrer ce qu’il a.",
      file: "Ce code est de tout le contenu de l’autre appareil. L’autre appareil doit plutôt montrer ce qu’il a.",
    },
    anotherHandOff:
      "Ce code est d’une autre transmission que le premier lu ; il est laissé de côté. Pour lire celle-ci, arrête la caméra et redémarre-la.",
    noFit: "Les codes ne vont pas ensemble. La lecture reprend du premier.",
  },
};
