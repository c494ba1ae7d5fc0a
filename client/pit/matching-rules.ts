/** Finds rules in the rule book by words. */
import type { RuleChapter } from "#core/advice/rule-book.ts";
import type { RuleEntry } from "#core/advice/rule-entry.ts";

/** The chapters with only those rules in which every one of the words occurs; chapters without one are left out. */
export function matchingChapters(chapters: readonly RuleChapter[], words: string): readonly RuleChapter[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return chapters
    .map((chapter) => ({ ...chapter, entries: chapter.entries.filter((entry) => holdsAll(entry, wanted)) }))
    .filter(({ entries }) => entries.length > 0);
}

function holdsAll(entry: RuleEntry, wanted: readonly string[]): boolean {
  const { id, when, moves, reason, notice, otherwise } = entry;
  const text = [id, when, ...moves, reason, notice, otherwise].join(" ").toLowerCase();
  return wanted.every((word) => text.includes(word));
}
