/** English texts of looking for something. */
export const find = {
  title: "Find",
  hint: "Names, plates, adjusters, values, reasons, notes: every word has to occur.",
  field: "Words",
  searching: "Looking through the records…",
  none: "Nothing has all of these words.",
  count: (count: number) => (count === 1 ? "1 found" : `${count} found`),
  cut: (count: number) => `The latest ${count} are shown. More words find less.`,
  kinds: { rider: "Rider", weekend: "Weekend", change: "Change", run: "Run", service: "Service" },
  plate: (plate: number) => `plate ${plate}`,
  rider: (name: string, facts: string) => `${name}, ${facts}`,
  weekend: (name: string, venue: string) => `${name}, ${venue}`,
  change: (rider: string, adjuster: string, from: string, to: string) => `${rider}: ${adjuster}, ${from} → ${to}`,
  run: (rider: string, session: string) => `${rider}: ${session}`,
  service: (rider: string, part: string, work: string) => `${rider}: ${part}, ${work}`,
  works: { "bath oil": "bath oil", complete: "complete service" },
  notYet: "Say who you are first.",
};
