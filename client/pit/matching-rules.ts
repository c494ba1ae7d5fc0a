/** Finds rules in the rule book by words, in the language that is spoken. */
import { trade } from "#client/text/trade.ts";
import { type ChapterName, chapterEntries, chapterNames } from "#core/advice/rule-book.ts";
import type { RuleText } from "#core/advice/rule-entry.ts";

export interface RuleChapter {
  readonly title: string;
  readonly about: string;
  readonly entries: readonly RuleText[];
}

/** All chapters of the rule book, in words. */
export function ruleBook(): readonly RuleChapter[] {
  return chapterNames.map((name: ChapterName) => ({
    ...trade.ruleChapters[name],
    entries: chapterEntries(name).map(trade.ruleText),
  }));
}

/** The chapters with only those rules in which every one of the words occurs; chapters without one are left out. */
export function matchingChapters(chapters: readonly RuleChapter[], words: string): readonly RuleChapter[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return chapters
    .map((chapter) => ({ ...chapter, entries: chapter.entries.filter((entry) => holdsAll(entry, wanted)) }))
    .filter(({ entries }) => entries.length > 0);
}

function holdsAll(entry: RuleText, wanted: readonly string[]): boolean {
  const { id, when, moves, reason, notice, otherwise } = entry;
  const text = [id, when, ...moves, reason, notice, otherwise].join(" ").toLowerCase();
  return wanted.every((word) => text.includes(word));
}
