/** English texts about who has what is on a bike. */
export const whoHas = {
  title: "Who has what is on the bike",
  all: (names: string) => `Proven to be with ${names}.`,
  notYet: (names: string) => `Not yet with ${names}.`,
  part: (name: string, missing: number, settings: number) => `${name} (${missing} of ${settings} missing)`,
  hint: "Proven means that the device has said so after saving it. It does not mean that somebody has looked.",
} as const;
