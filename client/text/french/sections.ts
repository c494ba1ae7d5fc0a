/** French texts of the named sections of a course. */
import type { sections as english } from "../english/sections.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const sections: Said<typeof english> = {
  shape: "Profil par fichier GPX, et secteurs nommés",
  count: (count: number) => plural(count, "secteur", "secteurs"),
  title: "Secteurs de la piste",
  theSections: "secteurs",
  hint: "Nomme ce dont les pilotes parlent, un pierrier par exemple. Ils peuvent alors dire où c’est arrivé. Le début et la fin peuvent rester vides.",
  none: "Aucun secteur n’est nommé.",
  add: "Ajouter un secteur",
  full: (most: number) => `Pas plus de ${most} secteurs.`,
  position: (position: number) => `Secteur ${position}`,
  name: "Nom",
  from: "De",
  to: "À",
  remove: (name: string) => `Retirer ${name}`,
  fieldOf: (section: string, field: string) => `${section} : ${field}`,
  problems: {
    noName: (section: string) => `${section} : donne-lui un nom de 1 à 80 caractères, ou retire-le.`,
    twice: (name: string) => `Deux secteurs s’appellent ${name}. Les pilotes ne sauraient pas lequel est lequel.`,
    oneEnd: (name: string) => `${name} : entre le début et la fin, ou aucun des deux.`,
    backwards: (name: string, from: string, to: string) =>
      `${name} : la fin est à ${to} m, donc pas après le début, à ${from} m.`,
    beyond: (name: string, to: string, length: string) =>
      `${name} : la fin est à ${to} m, mais la piste s’arrête à ${length} m.`,
    gone: (name: string) =>
      `Le secteur ${name} n’est plus nommé sur cette piste. Choisis à nouveau où c’était, puis enregistre.`,
  },
  where: "C’était où ?",
  whole: "sur tout le run",
  stretch: (name: string, from: string, to: string) => `${name}, de ${from} à ${to} m`,
  at: (section: string) => `Où : ${section}`,
};
