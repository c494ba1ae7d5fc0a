/** Sheets of paper that a page can be printed on. */
export const papers = ["A5", "A4", "Letter"] as const;
export type Paper = (typeof papers)[number];
/** Across: the sheet lies on its long side, for wide tables. */
export type Way = "upright" | "across";

/** The paper of that name, in capitals or not. */
export function paperNamed(name: string | undefined): Paper | undefined {
  return papers.find((paper) => paper.toLowerCase() === name?.toLowerCase());
}
