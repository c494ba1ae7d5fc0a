/** French forms of a place's name, which changes with its gender. */
import type { Place } from "#core/team/place.ts";

interface PlaceForms {
  /** "de la fourche". */
  readonly of: string;
  /** "de fourche", after "il n’y a pas". */
  readonly none: string;
  /** "quelle fourche". */
  readonly which: string;
}

export const placeForms: Readonly<Record<Place, PlaceForms>> = {
  fork: { of: "de la fourche", none: "de fourche", which: "quelle fourche" },
  shock: { of: "de l’amortisseur", none: "d’amortisseur", which: "quel amortisseur" },
  "front-tyre": { of: "du pneu avant", none: "de pneu avant", which: "quel pneu avant" },
  "rear-tyre": { of: "du pneu arrière", none: "de pneu arrière", which: "quel pneu arrière" },
};
