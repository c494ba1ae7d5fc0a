import { join } from "node:path";
import Database from "libsql";
import { StoreProblem } from "./store-problem.ts";

/**
 * Makes this process the only server of a data folder: two of them would each keep documents in memory that the other
 * does not see. An open exclusive transaction on a small database of its own is a lock of the operating system, so it
 * ends with the process, however that ends.
 * @returns the function that gives the folder free again.
 * @throws StoreProblem when another server has it.
 */
export function lockFolder(folder: string): () => void {
  const database = new Database(join(folder, "lock.db"));
  try {
    database.exec("BEGIN EXCLUSIVE");
  } catch (error) {
    database.close();
    throw new StoreProblem(`The data folder ${folder} is in use by another server.`, { cause: error });
  }
  return () => {
    database.exec("ROLLBACK");
    database.close();
  };
}
