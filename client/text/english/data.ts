/** English texts of the data that goes out and comes in. */
export const data = {
  link: "Data in and out",
  title: "Data in and out",
  forWhom: "Only a mechanic or a manager takes data in and out.",
  who: "Who are you?",
  back: { mechanic: "To the pit", manager: "To the review" },
  saved: (name: string) => `${name} is made. It is where this browser puts its downloads.`,
  file: {
    tooLarge: (bytes: number, most: number) =>
      `This file has ${megabytes(bytes)} MB; at most ${megabytes(most)} MB are read. Take it in as several files.`,
    unreadable: "This device could not open the file. Choose it once more.",
    notText:
      "This file is not text in UTF-8. Save it as UTF-8 (a spreadsheet offers that beside CSV) and choose it again.",
    quotes: (line: number) =>
      `Line ${line}: a quotation mark is opened and not closed as CSV asks. Save the table once more as CSV.`,
    noTable: "There is no table in this file: it needs a row with the names of the columns, and rows below it.",
    reading: "Reading the file…",
    writing: "Writing…",
    notLoaded: "The program for tables could not be loaded from the server. Try again when it is reached.",
  },
  team: {
    title: "All team data",
    hint: "One JSON file with everything that stands now: people, bikes, parts, baselines, weekends, settings, runs. Others can write such a file.",
    schema: "The form of the file (JSON Schema)",
    save: "Save all as JSON",
    take: "Take in a JSON file",
  },
  tables: {
    title: "Tables for a spreadsheet",
    which: "Table",
    names: {
      riders: "Riders",
      baselines: "Baselines",
      settings: "Settings on the bikes",
      changelog: "Changelog (out only)",
      runs: "Runs (out only)",
    },
    form: "The spreadsheet writes",
    forms: { point: "62.5, commas between cells", comma: "62,5; semicolons between cells" },
    save: "Save as CSV",
    take: "Take in a CSV file",
    hint: "Riders, baselines or settings: the first row says which. Settings that come in count as on the bike now, in the weekend chosen here.",
    weekend: "Weekend",
  },
  times: {
    title: "Run times",
    hint: "From a timing system's CSV file. A time goes to the rider's run that has none yet, or makes a run with only a time. Nothing that was said of a run is changed.",
    take: "Choose a file with times",
    weekend: "Weekend",
    session: "Session",
    columns: "Which column says what",
    column: { plate: "Plate", name: "Name", time: "Time", session: "Session" },
    none: "no column",
    sessionHint: "Where no column names the session, the one chosen above counts.",
    unnamed: (number: number) => `Column ${number}`,
    needs: "Choose the column of the time, and that of the plate or the name.",
    look: "Show what would change",
    tooMany: (most: number) => `This table has more than ${most} rows; take it in as several files.`,
  },
  preview: {
    title: (name: string) => `What ${name} would change`,
    counts: (fresh: number, changes: number, same: number, refused: number) =>
      `${fresh} new, ${changes} ${changes === 1 ? "change" : "changes"}, ${same} the same, ${refused} refused`,
    nothing: "Nothing would change: all that can be taken in is so already.",
    refused: "Refused",
    changes: "Changes",
    fresh: "New",
    difference: (field: string, from: string | undefined, to: string | undefined) =>
      `${field}: ${from ?? "nothing"} → ${to ?? "nothing"}`,
    take: "Take it in",
    takeGood: (count: number) => (count === 1 ? "Take the good one" : `Take the ${count} good ones`),
    leave: "Leave it",
    more: (count: number) => `Show ${count} more`,
    line: (place: string, sentence: string) => `${place}: ${sentence}`,
  },
  note: (name: string) => `From the file ${name}`,
  done: (count: number) => (count === 1 ? "Taken in: 1 entry." : `Taken in: ${count} entries.`),
  moved: "Something changed here while you were looking. This is what the file would change now.",
  undo: "Undo the whole file",
  undone: (count: number, kept: number) =>
    `Undone: ${count === 1 ? "1 entry" : `${count} entries`}.${kept > 0 ? ` ${kept} changed again since, and stand.` : ""}`,
} as const;

function megabytes(bytes: number): number {
  return Math.ceil(bytes / 1_000_000);
}
