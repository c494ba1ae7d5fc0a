/** The tables that a spreadsheet can have, and their head rows. */

const endColumns = ["start", "middle", "end", "return speed", "grip", "bottom-outs", "noticed"];

export const columnsOf = {
  riders: ["rider", "name", "plate", "mass", "mass unit", "bike"],
  baselines: ["rider", "course type", "adjuster", "value", "unit"],
  settings: [
    "rider",
    "bike",
    "adjuster",
    "value",
    "unit",
    "temperature",
    "temperature unit",
    "altitude",
    "altitude unit",
  ],
  changelog: ["at", "rider", "bike", "adjuster", "from", "to", "unit", "by", "why", "weekend", "session"],
  runs: [
    "rider",
    "run",
    "at",
    "weekend",
    "session",
    "seconds",
    "confidence",
    "section",
    ...endColumns.map((column) => `front ${column}`),
    ...endColumns.map((column) => `rear ${column}`),
    "note",
  ],
} as const satisfies Record<string, readonly string[]>;

export type TableName = keyof typeof columnsOf;
export const tableNames = Object.keys(columnsOf) as readonly TableName[];

/** Tables that can come back, told apart by their head rows. */
export const tablesIn = ["riders", "baselines", "settings"] as const satisfies readonly TableName[];
export type TableIn = (typeof tablesIn)[number];

/** What a head row has to name at least for the table to be this one. */
export const neededColumns: Readonly<Record<TableIn, readonly string[]>> = {
  baselines: ["rider", "course type", "adjuster", "value", "unit"],
  settings: ["rider", "bike", "adjuster", "value", "unit"],
  riders: ["rider", "name"],
};
