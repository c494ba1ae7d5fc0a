/** English texts of a setup that was sent back instead of approved. */

export const sentBack = {
  open: "Send it back with a note",
  note: "What is to be done before it can be the baseline",
  send: "Send it back",
  needsNote: "Write what is to be done: the mechanic sees it on the rider's bench.",
  sent: (type: string) =>
    `Sent back: it is not the baseline for ${type}. The mechanic sees the note on the rider's bench.`,
  already: "It was sent back with this note already: nothing had to be written.",
  undoSendBack: "Undo: take the note back",
  undoneSendBack: "Undone: the note was taken back.",
  title: (type: string) => `Sent back: not the baseline for ${type} yet`,
  by: (who: string, moment: string) => `${who}, ${moment}`,
  until: "The note goes when something is changed on the bike, when a new sag is measured, or when it is approved.",
  ofDispute: (type: string) =>
    `Two managers sent the setup for ${type} back with different notes. Both are shown until a manager answers again.`,
} as const;
