/** English texts of the lock against rain. */
export const rainLock = {
  lock: "Rain lock",
  locked: "Locked against rain: values only, nothing here can be changed.",
  open: "Hold to open",
  holding: "Keep holding …",
  short: "That was too short: hold it for a second.",
  confirm: "This press came without a finger or a key. To open the screen, confirm it.",
  confirmed: "Open the screen",
  toSet: "To set, in this order",
  nothingToSet: "Nothing is left to set by the sheet.",
  onTheBike: (place: string) => `On the bike: ${place.toLowerCase()}`,
  from: (value: string) => `from ${value}`,
  fromUnknown: "from a value that is not known",
} as const;
