/** The reading and writing of CSV, loaded when it is first needed; undefined when it cannot be had now. */
export async function loadCsv(): Promise<typeof import("./csv-text.ts") | undefined> {
  try {
    return await import("./csv-text.ts");
  } catch {
    return undefined;
  }
}
