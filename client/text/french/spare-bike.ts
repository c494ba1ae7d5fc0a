/** French texts of a rider's bikes: which is ridden, a setup copied to another, and a part moved between them. */
import type { Place } from "#core/team/place.ts";
import type { spareBike as english } from "../english/spare-bike.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";
import { placeForms } from "./place-forms.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const spareBike: Said<typeof english> = {
  title: (rider: string) => `Vélos de ${rider}`,
  link: (bike: string, count: number) => (count > 1 ? `Sur ${bike}, 1 vélo sur ${count}` : `Sur ${bike}`),
  backToBench: "À l’établi",
  ridden: "Quel vélo est utilisé",
  riddenAbout:
    "La fiche de réglages, les conseils, les runs et le téléphone du pilote suivent le vélo utilisé. Dis-le dès que le pilote change de vélo.",
  isRidden: "Utilisé maintenant",
  ride: (bike: string) => `Dès maintenant : ${bike}`,
  rides: (rider: string, bike: string) => `${rider} roule maintenant sur ${bike}`,
  firstRide: "Le premier run sur un autre vélo, ou après un changement de pièce, est lent et court.",
  noPart: "aucune pièce",
  inDispute: "en désaccord",
  part: (place: Place, name: string) => `${common.places[place]} : ${name}`,
  disputes: {
    title: (place: Place, bike: string) => `Sur ${bike}, ${placeForms[place].which} ?`,
    about:
      "Il a été dit des choses différentes. Regarde le vélo, puis dis ce qu’il en est. Jusque-là, il n’y a ici rien à cette place.",
    says: (part: string, who: string, when: string) => `${part} : mis là par ${who}, ${when}`,
    entered: (part: string) => `${part} : saisi avec ce vélo`,
    isOn: (part: string) => `${part} est dessus`,
    isElsewhere: (part: string) => `${part} n’est sur aucun vélo`,
    settled: (part: string, bike: string) => `Vélo regardé : ${part} est sur ${bike}`,
    settledAside: (part: string) => `Vélo regardé : ${part} n’est sur aucun vélo`,
    line: (place: Place, bike: string) =>
      `Sur ${bike}, ${placeForms[place].which} : il a été dit des choses différentes`,
  },
  copy: {
    title: "Copier les réglages sur un autre vélo",
    from: "De",
    to: "Vers",
    bike: (bike: string, rider: string) => `${bike} (${rider})`,
    isTheSame: "Choisis deux vélos différents.",
    atTheBench: "Pressions telles qu’on les lit à l’établi de la séance choisie.",
    asTyped: "Pressions telles qu’elles ont été écrites : les conditions de la séance ne sont pas saisies.",
    differencesTitle: "Ce qui diffère sur l’autre vélo",
    noDifferences: "Les pièces des deux vélos ont les mêmes données.",
    adjuster: "Réglage",
    value: "Serait réglé à",
    now: "Dessus maintenant",
    outcome: "Ce qui en est fait",
    unknown: "inconnu",
    inDispute: "en désaccord",
    outcomes: {
      copied: "Peut se régler.",
      same: "Est déjà réglé ainsi.",
      "no adjuster": "Laissé de côté : l’autre vélo n’a pas ce réglage.",
      "only there": "Reste tel quel : le premier vélo n’a pas ce réglage.",
      "in dispute": "Laissé de côté, car en désaccord. Regarde le premier vélo.",
      "not known": "Laissé de côté : inconnu sur le premier vélo.",
    },
    refused: (why: string) => `Refusé. ${why}`,
    reported: "Le pilote l’a dit ; aucun mécano ne l’a vu.",
    measure: {
      sag: "Le même nombre est ici un autre ressort : mesure le sag.",
      damping: "Les mêmes clics peuvent amortir autrement ici : à sentir sur un run court.",
    },
    sameSag: (adjuster: string, value: string) =>
      `${adjuster} : environ ${value} donnerait la même part de la course en sag, d’après les données des deux vélos. Ce n’est pas copié. Mesure le sag avant de t’y fier.`,
    range: (from: string, to: string) => `Plage ${from}, là-bas ${to}.`,
    span: (low: string, high: string) => `de ${low} à ${high}`,
    step: (from: string, to: string) => `Pas de ${from}, là-bas ${to}.`,
    perClick: (from: string, to: string) => `Amortissement par clic ${from}, là-bas ${to}.`,
    percent: (value: string) => `${value} %`,
    notMeasured: "pas mesuré",
    order: "Règle dans cet ordre, puis dis que c’est fait : toutes les limites restent respectées après chaque étape.",
    take: (count: number, bike: string) => `${settingsText(count)} sur ${bike} : c’est fait`,
    nothing: "Il n’y a rien à y régler.",
    leave: "Rien n’est écrit avant que tu dises que c’est fait.",
    done: (count: number, from: string, to: string) => `Copié de ${from} : ${settingsText(count)} sur ${to}`,
    why: (bike: string) => `Copié de ${bike}.`,
  },
  differences: {
    noPart: (place: Place, bike: string) => `${bike} n’a pas ${placeForms[place].none}.`,
    names: (place: Place, from: string, to: string) => `${common.places[place]} : ${to} au lieu de ${from}.`,
    archetypes: (place: Place, from: string, to: string) => `${common.places[place]} : ${to} au lieu de ${from}.`,
    archetype: {
      air: "ressort à air à une chambre positive",
      "two-chamber air": "ressort à air à chambre principale et chambre secondaire",
      coil: "ressort hélicoïdal",
      tyre: "pneu",
    },
    dimension: (what: string, from: string, to: string) => `${what} : ${to} au lieu de ${from}.`,
    ofPlace: (place: Place, what: string) => `${common.places[place]}, ${what.toLowerCase()}`,
    leverage: (from: string, to: string) => `Ratio de l’amortisseur : ${to} au lieu de ${from}.`,
    unknown: "inconnu",
    dimensions: {
      stroke: "Course",
      positiveArea: "Surface positive",
      negativeArea: "Surface négative",
      positiveVolume: "Volume positif",
      negativeVolume: "Volume négatif",
      equalisingStroke: "Course où les chambres s’équilibrent",
      secondaryVolume: "Volume secondaire",
      spacerVolume: "Volume d’une cale",
      threadPitch: "Pas de vis de la bague de précontrainte",
      tyreMarkedMaximum: "Maximum marqué sur le pneu",
      rimMarkedMaximum: "Maximum marqué sur la jante",
      forkAngle: "Angle de la fourche",
      sprungMass: "Masse suspendue du vélo",
      rearWheelTravel: "Débattement de la roue arrière",
      riderMass: "Masse du pilote",
    },
  },
  move: {
    title: "Une pièce : son histoire, et la déplacer",
    part: "Pièce",
    option: (part: string, bike: string) => `${part}, sur ${bike}`,
    optionAside: (part: string) => `${part}, sur aucun vélo`,
    to: "La mettre sur",
    choose: "Choisis où",
    aside: "Aucun vélo, mise de côté",
    swapLegend: (part: string) => `Il y a une pièce à cette place : ${part}`,
    swap: { swap: "Échanger les deux", aside: "Mettre celle-là de côté" },
    airLegend: "L’air dans ce qui est déplacé",
    air: { kept: "est resté dedans", released: "a été vidé" },
    needsPlace: "Choisis où va la pièce.",
    needsAir: "Dis si l’air est resté dans la pièce.",
    goesAlong:
      "Les heures roulées, les révisions et les réglages de la pièce suivent. Ce qu’on n’en sait pas reste inconnu sur son nouveau vélo ; la pression d’un pneu qui a été démonté est inconnue.",
    cautions: [
      "Vide tout l’air avant d’ouvrir une pièce. Ne desserre jamais une pièce dont le ressort est sous charge.",
      "Vide l’air du pneu avant de l’enlever de la jante.",
      "Serre aux couples du fabricant, et fais voir les pièces usées ou abîmées à un mécanicien qualifié.",
    ],
    save: "C’est déplacé",
    done: (part: string, bike: string) => `Déplacé : ${part}, maintenant sur ${bike}`,
    doneAside: (part: string) => `Déplacé : ${part}, mis de côté`,
    why: (part: string) => `Venu avec la pièce : ${part}.`,
    whyGone: (part: string) => `Inconnu depuis que cette pièce a été déplacée : ${part}.`,
    problems: {
      unknownPart: "La pièce n’est plus connue.",
      unknownBike: "Le vélo n’est plus connu.",
      samePlace: "La pièce y est déjà.",
      notThere: "La pièce n’est plus où elle était : quelqu’un l’a déplacée, ou dit autre chose. Regarde les vélos.",
      placeInDispute: (place: Place, bike: string) =>
        `En désaccord : ${placeForms[place].which} est sur ${bike}. Tranche d’abord.`,
      settingsInDispute: (bike: string, adjusters: string) =>
        `En désaccord sur ${bike} : ${adjusters}. Regarde le vélo et tranche d’abord.`,
    },
    historyTitle: (part: string) => `Histoire de la pièce : ${part}`,
    stay: (bike: string, from: string | undefined, until: string | undefined) =>
      until === undefined
        ? from === undefined
          ? `${bike}, depuis qu’on la connaît`
          : `${bike}, depuis le ${from}`
        : from === undefined
          ? `${bike}, jusqu’au ${until}`
          : `${bike}, du ${from} au ${until}`,
    noBike: "Sur aucun vélo",
    placeInDispute: "Sa place est en désaccord : son histoire se montre à nouveau dès que c’est tranché.",
    hours: (work: string, hours: string) => `${work} : ${hours} h depuis la dernière fois`,
    noChanges: "Aucun réglage n’y a été noté pour elle.",
    changes: (count: number) => plural(count, "réglage fait", "réglages faits"),
    change: (adjuster: string, value: string, who: string, when: string) => `${adjuster} ${value}, ${who}, ${when}`,
    more: (count: number) => `et ${plural(count, "réglage d’avant", "réglages d’avant")}`,
  },
  undo: {
    moved: (part: string) => `pièce déplacée, ${part}`,
    rides: (bike: string) => `passé sur ${bike}`,
    copied: (count: number) => `copié, ${settingsText(count)}`,
  },
};
