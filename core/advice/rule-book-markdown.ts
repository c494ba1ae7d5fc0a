/** The rule book as an English text to read or print. */
import { chapterEntries, chapterNames } from "./rule-book.ts";
import type { RuleText } from "./rule-entry.ts";
import { chapterText, ruleText } from "./rule-text.ts";

/** All chapters as markdown. */
export function ruleBookMarkdown(): string {
  const chapters = chapterNames.map((name) => ({ ...chapterText[name], entries: chapterEntries(name).map(ruleText) }));
  const count = chapters.reduce((sum, { entries }) => sum + entries.length, 0);
  const texts = chapters.map(({ title, about, entries }) =>
    [`## ${title}`, about, ...entries.map(entryMarkdown)].join("\n\n"),
  );
  return `${[`# The rules of advice`, `${count} rules. Made from the rules themselves.`, ...texts].join("\n\n")}\n`;
}

function entryMarkdown({ id, when, moves, reason, notice, otherwise, provenance }: RuleText): string {
  return [
    `### ${id}`,
    `*When:* ${when}`,
    ...(moves.length > 0 ? [moves.map((move, index) => `${index + 1}. ${move}`).join("\n")] : []),
    `*Why:* ${reason}`,
    ...(notice === undefined ? [] : [`*The rider should notice:* ${notice}`]),
    ...(otherwise === undefined ? [] : [`*If it does not help:* ${otherwise}`]),
    `*Source:* ${provenance}${provenance === "common practice" ? ", no source" : ""}`,
  ].join("\n\n");
}
