/** Why nothing of a file can be taken in, as facts and in English. */

export type FileProblem =
  | { readonly type: "not JSON" }
  | { readonly type: "other format"; readonly allowed: string }
  /** `version` as the file has it, cut; absent where it has none. */
  | { readonly type: "other version"; readonly version?: string; readonly allowed: number }
  | { readonly type: "no values" }
  | { readonly type: "too many values"; readonly most: number }
  | { readonly type: "too many rows"; readonly most: number }
  /** `allowed`: the tables that can be taken in, with the columns that each has to have. */
  | {
      readonly type: "other table";
      readonly allowed: readonly { readonly table: string; readonly columns: readonly string[] }[];
    };

/** One sentence for a person: what it is, and what is allowed. */
export function describeFileProblem(problem: FileProblem): string {
  switch (problem.type) {
    case "not JSON":
      return "This file is not JSON, or it is cut off. Choose a file with the team's data.";
    case "other format":
      return `This is not a file with a team's data: its "format" has to be "${problem.allowed}".`;
    case "other version":
      return `This file has the version ${problem.version ?? "(none)"}; this program reads version ${problem.allowed}.`;
    case "no values":
      return 'This file has no "values"; allowed is an object of kinds.';
    case "too many values":
      return `This file holds more than ${problem.most} values; take it in as several files.`;
    case "too many rows":
      return `This table has more than ${problem.most} rows; take it in as several files.`;
    case "other table": {
      const allowed = problem.allowed.map(({ table, columns }) => `${table} (${columns.join(", ")})`).join("; ");
      return `The first row does not name the columns of a table that can be taken in. Allowed: ${allowed}.`;
    }
  }
}
