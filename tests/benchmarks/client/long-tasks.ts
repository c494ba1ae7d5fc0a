/** What keeps a page from answering once it has started. */
import { line } from "../measure.ts";
import { type LongTask, notesOf } from "./page-watch.ts";
import type { SlowDevice } from "./slow-device.ts";

const LONGEST_MS = 100;

/** Long tasks of pages after their start, with the name of what was going on. */
export interface AfterStart {
  readonly what: string;
  readonly longTasks: readonly LongTask[];
}

/** Those of a device from the moment on at which it could be used. */
export async function longTasksAfterStart(what: string, { page, usableAt }: SlowDevice): Promise<AfterStart> {
  const { longTasks } = await notesOf(page);
  return { what, longTasks: longTasks.filter(({ start }) => start >= usableAt) };
}

/** Prints the report; true when none is too long. */
export function reportLongTasks(pages: readonly AfterStart[], write: (text: string) => void): boolean {
  write("\nLong tasks after the start\n");
  const judged = pages.map(({ what, longTasks }) => {
    const longest = Math.max(0, ...longTasks.map(({ duration }) => duration));
    const tooLong = longTasks.filter(({ duration }) => duration > LONGEST_MS);
    const kept = tooLong.length === 0;
    const value = `${longTasks.length} over 50 ms, ${tooLong.length} over ${LONGEST_MS} ms, longest ${Math.round(longest)} ms`;
    write(line(what, value, { text: `none over ${LONGEST_MS} ms`, kept }));
    return kept;
  });
  return judged.every(Boolean);
}
