/** English texts of why the advice does not propose a change that somebody has in mind. */
export const whyNot = {
  title: "Why not another change?",
  hint: "Choose an adjuster and a way to turn it. The rules answer.",
  adjuster: "Adjuster",
  choose: "Choose an adjuster",
  direction: "Which way",
  directions: {
    damper: { up: "more open", down: "more closed" },
    other: { up: "more", down: "less" },
  },
  noAdjuster: "This bike has no such adjuster.",
  proposed: "It is the first adjustment above.",
  proposedLater: (waitsFor: string) => `It is proposed, but not yet. ${waitsFor}`,
  noRule: "No rule answers anything that a rider says by this change.",
  opposite: (setting: string) => `The advice goes the other way: ${setting}.`,
  /** Before what a rule would answer and what keeps it from it. */
  wouldIf: (end: string, reason: string) => `${end}: ${reason}`,
  notSaid: (symptoms: string) => `Not now: nobody said or measured “${symptoms}”.`,
  spokenAgainst: (symptoms: string) => `Not now: “${symptoms}” speaks against it.`,
  inQuestion: (symptoms: string) => `Not before the rider was asked: “${symptoms}” contradicts what else was said.`,
  anotherWay: (adjuster: string) =>
    `The same rule goes by the ${adjuster.charAt(0).toLowerCase()}${adjuster.slice(1)} first.`,
  twoChanges: "Two changes for the same complaint did not help: look at service and damage.",
  more: (count: number) => (count === 1 ? "1 more rule" : `${count} more rules`),
};
