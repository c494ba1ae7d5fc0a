/** English texts about putting cautions out of the way. */
export const cautions = {
  fold: "Read: fold away for now",
  folded: "Folded away until this screen is opened again.",
  show: "Show the cautions",
} as const;
