/** French texts of a course's profile, and of the file that it comes from. */
import { STEEP_FROM } from "#core/course/course-facts.ts";
import { SHORTEST_TRACK, SMOOTHED_OVER } from "#core/course/track-limits.ts";
import { heightsOnEarth, LONGEST_COURSE } from "#core/weekend/course-shape.ts";
import type { courseProfile as english } from "../english/course-profile.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";

const steepPercent = Math.round(STEEP_FROM * 100);

export const courseProfile: Said<typeof english> = {
  title: "Profil de la piste",
  theProfile: "profil",
  summary: (length: string, drop: string) => `Profil : ${length} m de long, dénivelé ${drop} m`,
  none: "Pas encore de profil. Les sauts et le mouillé se jugent de toute façon à l’œil.",
  choose: "Choisir un fichier GPX",
  chooseHint: (megabytes: string) =>
    `GPX 1.1 avec altitudes, ${megabytes} Mo au plus. Rien n’est enregistré avant que tu touches Enregistrer.`,
  reading: "Lecture du fichier…",
  taken: (file: string) => `Vient de ${file}, pas encore enregistré.`,
  leave: "Laisser le profil comme il était",
  remove: "Retirer le profil",
  track: "Trace du fichier",
  unnamed: (position: number) => `Trace ${position}`,
  route: (name: string) => `${name} (itinéraire prévu)`,
  uphill: (metres: string) => `Cette ligne monte de ${metres} m.`,
  turn: "Inverser le sens",
  filled: {
    gaps: (count: number, metres: string) =>
      `${plural(count, "trou", "trous")} dans la trace, ${chosen(count, "comblé par une ligne droite", "comblés par des lignes droites")}, ${metres} m en tout.`,
    withoutHeight: (count: number) => `${plural(count, "point", "points")} sans altitude.`,
    skipped: (count: number) =>
      `${plural(count, "point sans position laissé", "points sans position laissés")} de côté.`,
  },
  facts: {
    length: "Longueur",
    slope: "Longueur au sol",
    drop: "Dénivelé",
    climb: "Remontées en route",
    mean: "Pente moyenne",
    steepest: "Le plus raide",
  },
  metres: (value: string) => `${value} m`,
  percent: (value: string) => `${value} %`,
  stretch: (from: string, to: string) => `de ${from} à ${to} m`,
  steepestAt: (percent: string, from: string, to: string) => `${percent} % de ${from} à ${to} m`,
  chart: {
    title: "Altitude le long de la piste",
    height: "Altitude, m",
    along: "Le long de la piste, m",
    thick: "trait épais : raide",
    sections: "barres : secteurs par numéro",
    described: (first: string, last: string, length: string, steep: readonly string[]) =>
      `Altitude le long de la piste : de ${first} m au départ à ${last} m à l’arrivée, ${length} m plus loin. ${
        steep.length === 0 ? "Raide nulle part." : `Raide : ${steep.join(", ")}.`
      }`,
    more: (count: number) => plural(count, "autre", "autres"),
  },
  rule: `Est raide ce qui descend de ${steepPercent} % ou plus (${steepPercent} m sur 100 m), altitudes lissées sur ${SMOOTHED_OVER} m ; c’est notre propre règle. Les marches plus courtes n’apparaissent pas.`,
  proposed: (share: string, part: string) => `${share} % de la longueur est raide. Part proposée : ${part}.`,
  take: (part: string) => `Prendre raide ${part}`,
  isTaken: (part: string) => `Raide est à ${part}, comme proposé. À toi de juger à sauts et mouillée.`,
  problems: {
    tooLarge: (file: string, allowed: string) =>
      `Le fichier fait ${file} Mo ; ${allowed} Mo sont permis. Rien n’a été modifié.`,
    unreadable: "Le fichier ne se laisse pas lire. Choisis-le encore une fois. Rien n’a été modifié.",
    notText: "Le fichier n’est pas du texte en UTF-8, comme GPX l’exige. Rien n’a été modifié.",
    noReader:
      "Le lecteur de fichiers GPX n’est pas encore sur cet appareil. Réessaie quand l’ordinateur du stand est joignable.",
    notXml: "Le fichier est abîmé ou n’est pas du GPX : il ne se lit pas comme XML. Rien n’a été modifié.",
    declares: "Le fichier déclare un type de document ou des entités à lui, ce que GPX n’a pas. Rien n’a été modifié.",
    notGpx: (root: string) => `Le fichier contient « ${root} », pas du GPX. Rien n’a été modifié.`,
    badOrder:
      "Dans ce fichier, des traces ou des points sont les uns dans les autres, ce que GPX ne permet pas. Rien n’a été modifié.",
    noTrack: "Le fichier ne contient aucune trace ni itinéraire d’au moins deux points. Rien n’a été modifié.",
    tooManyPoints: (count: string, allowed: string) =>
      `Le fichier a ${count} points ; ${allowed} sont permis. Enregistre le run seul, sans le reste de la journée. Rien n’a été modifié.`,
    tooManyTracks: (count: string, allowed: string) =>
      `Le fichier a ${count} traces ; ${allowed} sont permises. Rien n’a été modifié.`,
    badPlace: (track: string, point: number) =>
      `${track}, point ${point} : la latitude va de −90 à 90, la longitude de −180 à 180. Rien n’a été modifié.`,
    badHeight: (track: string, point: number) =>
      `${track}, point ${point} : son altitude est en dehors de ${heightsOnEarth.lowest} à ${heightsOnEarth.highest} m. Rien n’a été modifié.`,
    noHeight: (track: string) =>
      `${track} n’a pas d’altitudes et ne dit donc rien du dénivelé. Enregistre le run avec les altitudes.`,
    tooShort: (track: string, metres: string) =>
      `${track} fait ${metres} m de long ; il en faut ${SHORTEST_TRACK} pour un profil.`,
    tooLong: (track: string, metres: string) =>
      `${track} fait ${metres} m de long ; une piste a au plus ${LONGEST_COURSE} m. Enregistre le run seul.`,
  },
};
