import { expect, test } from "vitest";
import { conditionRules } from "#core/advice/condition-rules.ts";
import { conflictRules } from "#core/advice/feedback-rules/conflict-rules.ts";
import { feedbackRules } from "#core/advice/feedback-rules/rule-table.ts";
import { chapterEntries, chapterNames } from "#core/advice/rule-book.ts";
import { ruleBookMarkdown } from "#core/advice/rule-book-markdown.ts";
import { ruleText } from "#core/advice/rule-text.ts";
import { ruleWords } from "#core/advice/rule-words.ts";

const entries = chapterNames.flatMap(chapterEntries).map(ruleText);

test("the rule book holds every rule once, with its reason and where it comes from", () => {
  const ids = entries.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const rule of [...feedbackRules, ...conflictRules, ...conditionRules]) expect(ids).toContain(rule.id);
  const markdown = ruleBookMarkdown();
  for (const { id, reason, provenance } of entries) {
    expect(markdown).toContain(`### ${id}\n`);
    expect(markdown).toContain(reason);
    expect(ruleWords(id)?.reason).toBe(reason);
    expect(markdown).toContain(`*Source:* ${provenance}`);
  }
  expect(markdown).toContain(`${entries.length} rules.`);
});

test("moves are said in order, with how they are sized", () => {
  const entry = entries.find(({ id }) => id === "full-travel-too-easily");
  expect(entry?.moves.slice(0, 3)).toEqual([
    "raise secondary pressure, sized to keep the hardest hit within the travel; rebound follows",
    "raise volume spacers, sized to keep the hardest hit within the travel; rebound follows",
    "raise main pressure, sized to keep the hardest hit within the travel; rebound follows",
  ]);
});
