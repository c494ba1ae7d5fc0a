import type { RidingStyle } from "#core/team/riding-style.ts";

/** English texts of what is known of a rider's body and stance. */
export const riderDetails = {
  summary: (mass: string, share: string) => `Rider: ${mass}, front share ${share}`,
  notMeasured: "not measured",
  about:
    "The mass is with all that is worn and carried. When it is another than at the baseline, the setup sheet corrects the springs for it, so that the sag stays.",
  mass: "Mass with kit",
  share: "Front share of the weight",
  shareUnit: "of 1",
  shareAbout: (assumed: string) =>
    `The part of the weight that the front wheel carries in the riding stance. Leave it empty while it is not measured: then ${assumed} is assumed.`,
  style: "How the rider rides now",
  styles: { calm: "calm", usual: "as usual", hard: "hard" } satisfies Record<RidingStyle, string>,
  styleAbout:
    "When it is another than at a baseline, the setup sheet says what it changes. Leave it open when in doubt.",
  save: "Save the rider",
  saved: (name: string, mass: string, share: string) => `Saved: ${name}, ${mass}, front share ${share}`,
  needsMass: "Mass with kit: enter the mass.",
  disputed: "Two people have entered different values here. What you save settles it.",
  changedMeanwhile: "Somebody else has changed this while it was open here. Save again to replace it with yours.",
  ofRider: "The rider's details: two people have entered different values",
} as const;
