/** What a device has on its disk, read beside the program: the browser's IndexedDB. */
import type { Page } from "playwright-core";
import { recordsOf } from "./laptop-log.ts";

/** The records of a document, as one text each, in the order of these texts; none when it was never kept. */
export async function recordsOnDevice(page: Page, document: string): Promise<readonly string[]> {
  const updates = await page.evaluate(async (name) => {
    // Opening a database that is not there would make an empty one in its place.
    const known = await indexedDB.databases();
    if (!known.some((database) => database.name === name)) return [];
    const answer = <Result>(request: IDBRequest<Result>): Promise<Result> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await answer(indexedDB.open(name));
    const rows: Uint8Array[] = await answer(database.transaction("updates").objectStore("updates").getAll());
    database.close();
    return rows.map((row) => [...row]);
  }, `pitslate/${document}`);
  return recordsOf(updates.map((bytes) => Uint8Array.from(bytes)));
}
