/** The words of the rules: each language has them all, and each rule its own. */
import { describe, expect, it } from "vitest";
import { type Language, languages, setLanguage } from "#client/text/language.ts";
import { withWords } from "#client/text/load-words.ts";
import { words } from "#client/text/spoken.ts";
import { chapterEntries, chapterNames } from "#core/advice/rule-book.ts";
import type { RuleEntry } from "#core/advice/rule-entry.ts";

const book = chapterNames.flatMap((chapter) => chapterEntries(chapter));
const fromFeedback = book.filter(({ type }) => type === "feedback");

const idOf = ({ rule }: RuleEntry) => rule.id;

async function tradeOf(language: Language): Promise<ReturnType<typeof words<"trade">>> {
  setLanguage(language);
  await withWords(async () => undefined)();
  return words("trade");
}

const english = await tradeOf("en");

describe.each(languages)("The rules of advice in %s", async (language) => {
  const trade = await tradeOf(language);

  it("each have a reason", () => {
    expect(book.filter((entry) => !trade.rule(idOf(entry))?.reason).map(idOf)).toEqual([]);
  });

  it("each say what to notice and what to do otherwise, where they answer feedback", () => {
    const silent = fromFeedback.filter((entry) => {
      const said = trade.rule(idOf(entry));
      return !said?.notice || !said.otherwise;
    });
    expect(silent.map(idOf)).toEqual([]);
  });

  it("say in the rule book what they say in the advice", () => {
    const differing = book.filter((entry) => {
      const said = trade.rule(idOf(entry));
      const { reason, notice, otherwise } = trade.ruleText(entry);
      return reason !== said?.reason || notice !== said.notice || otherwise !== said.otherwise;
    });
    expect(differing.map(idOf)).toEqual([]);
  });

  it("know nothing of a rule that is not in the book", () => {
    expect(trade.rule("no-such-rule")).toBeUndefined();
  });
});

describe.each(languages.filter((tag) => tag !== "en"))("The rules of advice in %s beside English", async (language) => {
  const trade = await tradeOf(language);

  it("have the same moves", () => {
    const differing = book.filter(
      (entry) => trade.ruleText(entry).moves.length !== english.ruleText(entry).moves.length,
    );
    expect(differing.map(idOf)).toEqual([]);
  });

  it("tell the rules apart where English does", () => {
    const said = (texts: typeof trade) => new Set(book.map((entry) => texts.rule(idOf(entry))?.reason)).size;
    expect(said(trade)).toBeGreaterThanOrEqual(said(english));
  });
});
