/** English texts of the hand-off without a network. */
export const handOff = {
  link: "Hand over without a network",
  title: "Hand over without a network",
  hint: "By codes: one device shows them on its screen, the other reads them with its camera. By file: one device saves it, the other takes it in, by cable, memory stick, or whatever the two phones use to pass files. Nothing is overwritten: what two people set apart shows as disputed.",
  codesNotLoaded: "The hand-off by codes could not be loaded from the server. Hand over by file instead.",
  back: "Back",
  save: {
    title: "From this device",
    action: "Save everything to a file",
    byCodes: "Hand over by codes",
    share: "Pass the file on",
    busy: "Making the file…",
    done: (name: string, entries: number) => `${name} is made, with ${inEntries(entries)}.`,
    incomplete: "Older documents of this device could not be read, or had no room, and are not in it.",
    where: "It is where this browser puts its downloads.",
    holds: "In the file",
    whoFirst: "Say first who has this device. Only then it has the riders' entries open.",
    who: "Who are you?",
    team: "Team, bikes, baselines and weekends",
    document: (name: string, entries: number) => `${name}: ${inEntries(entries)}`,
    rider: (name: string, year: number) => `${name}, ${year}`,
    notShared: "The file was not passed on. It can still be saved here.",
  },
  takeIn: {
    title: "To this device",
    action: "Take in a file",
    byCodes: "Take in by codes",
    ending: (ending: string) => `A file whose name ends in ${ending}`,
    reading: "Reading the file…",
    unreadable: "This device could not open the file. Choose it once more.",
    madeBy: (moment: string, name: string | undefined) =>
      name === undefined ? `Made ${moment}` : `Made by ${name}, ${moment}`,
    holds: (entries: number) => `${inEntries(entries)} in it`,
    fresh: (entries: number) => `${inEntries(entries)} new here`,
    whose: (name: string, entries: number) => `${name}: ${inEntries(entries)}`,
    span: (first: string, last: string) => (first === last ? `Written ${first}` : `Written ${first} to ${last}`),
    nothingNew: "Nothing is new: this device has all that is in it.",
    merge: "Merge it",
    leave: "Leave it",
    merging: "Merging…",
    merged: (entries: number) =>
      entries === 1 ? "Merged: 1 new entry is on this device." : `Merged: ${entries} new entries are on this device.`,
    notSaved: (entries: number) =>
      `Merged: ${inEntries(entries)} new, but not saved on this device yet. Keep this page open.`,
    onward: "They go on to the server when it is reached.",
  },
} as const;

function inEntries(count: number): string {
  return count === 1 ? "1 entry" : `${count} entries`;
}
