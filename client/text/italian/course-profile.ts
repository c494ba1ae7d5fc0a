/** Italian texts of a course's profile, and of the file that it comes from. */
import { STEEP_FROM } from "#core/course/course-facts.ts";
import { SHORTEST_TRACK, SMOOTHED_OVER } from "#core/course/track-limits.ts";
import { heightsOnEarth, LONGEST_COURSE } from "#core/weekend/course-shape.ts";
import type { courseProfile as english } from "../english/course-profile.ts";
import type { Said } from "../spoken.ts";

const steepPercent = Math.round(STEEP_FROM * 100);

export const courseProfile: Said<typeof english> = {
  title: "Profilo della pista",
  theProfile: "profilo",
  summary: (length: string, drop: string) => `Profilo: lunghezza ${length} m, dislivello ${drop} m`,
  none: "Ancora nessun profilo. Salti e terreno bagnato si giudicano comunque a mano.",
  choose: "Scegli un file GPX",
  chooseHint: (megabytes: string) =>
    `GPX 1.1 con le quote, fino a ${megabytes} MB. Non si salva niente finché non premi Salva.`,
  reading: "Leggo il file…",
  taken: (file: string) => `Da ${file}, non ancora salvato.`,
  leave: "Lascia il profilo com’era",
  remove: "Togli il profilo",
  track: "Traccia nel file",
  unnamed: (position: number) => `Traccia ${position}`,
  route: (name: string) => `${name} (un percorso pianificato)`,
  uphill: (metres: string) => `Questa linea sale di ${metres} m.`,
  turn: "Inverti il verso",
  filled: {
    gaps: (count: number, metres: string) =>
      count === 1
        ? `Un’interruzione nella traccia, chiusa con linee dritte per ${metres} m in tutto.`
        : `${count} interruzioni nella traccia, chiuse con linee dritte per ${metres} m in tutto.`,
    withoutHeight: (count: number) => (count === 1 ? "Un punto è senza quota." : `${count} punti sono senza quota.`),
    skipped: (count: number) =>
      count === 1 ? "Un punto senza posizione è stato saltato." : `${count} punti senza posizione sono stati saltati.`,
  },
  facts: {
    length: "Lunghezza",
    slope: "Lungo il terreno",
    drop: "Dislivello",
    climb: "Salite lungo la pista",
    mean: "Pendenza media",
    steepest: "Più ripido",
  },
  metres: (value: string) => `${value} m`,
  percent: (value: string) => `${value} %`,
  stretch: (from: string, to: string) => `da ${from} a ${to} m`,
  steepestAt: (percent: string, from: string, to: string) => `${percent} % da ${from} a ${to} m`,
  chart: {
    title: "Quota lungo la pista",
    height: "Quota, m",
    along: "Lungo la pista, m",
    thick: "linea spessa: ripido",
    sections: "barre: settori con il loro numero",
    described: (first: string, last: string, length: string, steep: readonly string[]) =>
      `Quota lungo la pista: da ${first} m alla partenza a ${last} m all’arrivo, dopo ${length} m. ${
        steep.length === 0 ? "Ripido in nessun punto." : `Ripido: ${steep.join(", ")}.`
      }`,
    more: (count: number) => `altri ${count}`,
  },
  rule: `È ripido quello che scende del ${steepPercent} % o più (${steepPercent} m su 100 m), con le quote spianate su ${SMOOTHED_OVER} m; è una regola nostra. I gradini più corti non si vedono.`,
  proposed: (share: string, part: string) => `È ripido il ${share} % della lunghezza. Parte proposta: ${part}.`,
  take: (part: string) => `Prendi ripida ${part}`,
  isTaken: (part: string) => `Ripida è ${part}, come proposto. Salti e bagnato li giudichi tu.`,
  problems: {
    tooLarge: (file: string, allowed: string) =>
      `Il file ha ${file} MB; sono ammessi ${allowed} MB. Non è cambiato niente.`,
    unreadable: "Il file non si può leggere. Sceglilo di nuovo. Non è cambiato niente.",
    notText: "Il file non è testo in UTF-8, come deve essere un GPX. Non è cambiato niente.",
    noReader: "Il lettore di file GPX non è ancora su questo dispositivo. Riprova quando il computer è raggiungibile.",
    notXml: "Il file è danneggiato o non è un GPX: non si può leggere come XML. Non è cambiato niente.",
    declares: "Il file dichiara un tipo di documento o entità proprie, che in GPX non esistono. Non è cambiato niente.",
    notGpx: (root: string) => `Il file contiene «${root}», non GPX. Non è cambiato niente.`,
    badOrder:
      "In questo file ci sono tracce o punti l’uno dentro l’altro, cosa che GPX non ammette. Non è cambiato niente.",
    noTrack: "Il file non contiene nessuna traccia e nessun percorso con almeno due punti. Non è cambiato niente.",
    tooManyPoints: (count: string, allowed: string) =>
      `Il file ha ${count} punti; ne sono ammessi ${allowed}. Salva solo la discesa, senza il resto della giornata. Non è cambiato niente.`,
    tooManyTracks: (count: string, allowed: string) =>
      `Il file ha ${count} tracce; ne sono ammesse ${allowed}. Non è cambiato niente.`,
    badPlace: (track: string, point: number) =>
      `${track}, punto ${point}: la latitudine va da −90 a 90, la longitudine da −180 a 180. Non è cambiato niente.`,
    badHeight: (track: string, point: number) =>
      `${track}, punto ${point}: la quota è fuori dal campo da ${heightsOnEarth.lowest} a ${heightsOnEarth.highest} m. Non è cambiato niente.`,
    noHeight: (track: string) =>
      `${track} non ha quote, quindi non dice niente del dislivello. Registrala con le quote.`,
    tooShort: (track: string, metres: string) =>
      `${track} è lunga ${metres} m; per un profilo ne servono ${SHORTEST_TRACK}.`,
    tooLong: (track: string, metres: string) =>
      `${track} è lunga ${metres} m; una pista ha al massimo ${LONGEST_COURSE} m. Salva solo la discesa.`,
  },
};
