/** The texts of every language beside the English ones. A further language joins by its line in `alike-words.ts`. */
import { describe, expect, it, vi } from "vitest";
import * as englishFirst from "#client/text/english/first-screens.ts";
import * as englishWorkplaces from "#client/text/english/workplaces.ts";
import { type Language, languages } from "#client/text/language.ts";
import type { words } from "#client/text/spoken.ts";
import { alikeEverywhere, alikeWords } from "./alike-words.ts";
import { markersIn, type Said, sayings, silentTexts, type Text, textsOf, unfilled } from "./filled-texts.ts";

type Part = Parameters<typeof words>[0];
const firstParts = Object.keys(englishFirst) as Part[];
const parts = [...firstParts, ...(Object.keys(englishWorkplaces) as Part[])];

const translations = languages.filter((tag) => tag !== "en");
const { texts: english } = await catalogueOf("en");

interface Catalogue {
  readonly texts: ReadonlyMap<string, Text>;
  /** Parts that are not there when English has them: those of the first screen before the workplaces' are loaded. */
  readonly lacking: readonly Part[];
}

/** A language's texts as a device loads them that has loaded no other language before. */
async function catalogueOf(language: Language): Promise<Catalogue> {
  vi.resetModules();
  const { setLanguage } = await import("#client/text/language.ts");
  const { loadFirstWords, withWords } = await import("#client/text/load-words.ts");
  const { words } = await import("#client/text/spoken.ts");
  const isLoaded = (part: Part): boolean => {
    try {
      return words(part) !== undefined;
    } catch {
      return false;
    }
  };
  setLanguage(language);
  await loadFirstWords();
  const lateParts = firstParts.filter((part) => !isLoaded(part));
  await withWords(async () => undefined)();
  const loaded = parts.filter(isLoaded);
  return {
    texts: textsOf(Object.fromEntries(loaded.map((part) => [part, words(part)]))),
    lacking: parts.filter((part) => lateParts.includes(part) || !loaded.includes(part)),
  };
}

/** Each English saying beside the translated one of the same text under the same filling. */
function pairs(translated: ReadonlyMap<string, Text>): readonly { where: string; model: string; said: Said["text"] }[] {
  return [...english].flatMap(([path, model]) => {
    const text = translated.get(path);
    const said = new Map(text === undefined ? [] : sayings(path, text).map((one) => [one.filling, one.text]));
    return sayings(path, model).flatMap(({ filling, text: modelText }) =>
      modelText === undefined ? [] : [{ where: `${path} (${filling})`, model: modelText, said: said.get(filling) }],
    );
  });
}

/** Texts of a catalogue that are empty, by their paths. */
function emptyIn(texts: ReadonlyMap<string, Text>): readonly string[] {
  return [...texts].filter(([, text]) => typeof text === "string" && text.trim() === "").map(([path]) => path);
}

/** "… run" of "1 run" as of every other count. */
function uncounted(text: string): string {
  return unfilled(text).replace(/\b[012]\b/g, "…");
}

describe("The English texts", () => {
  it("can each be filled in some way, else the languages are not compared", () => {
    const silent = [...english].filter(([path, text]) => sayings(path, text).every((said) => said.text === undefined));
    expect(silent.map(([path]) => path)).toEqual([]);
  });

  it("are none of them empty but those that say nothing in any language", () => {
    expect(emptyIn(english)).toEqual(silentTexts);
  });
});

describe.each(translations)("The texts in %s", async (language) => {
  const { texts: translated, lacking } = await catalogueOf(language);
  const alike = { ...alikeEverywhere, ...alikeWords[language as keyof typeof alikeWords] };

  it("have every part that English has, as early as English has it", () => {
    expect(lacking).toEqual([]);
  });

  it("say something wherever English does, and only there", () => {
    const spoken = pairs(translated).filter(({ model }) => model.trim() !== "");
    expect(spoken.filter(({ said }) => said === undefined || said.trim() === "")).toEqual([]);
    expect(emptyIn(translated)).toEqual(silentTexts);
  });

  it("tell every fact that the English ones tell", () => {
    const untold = pairs(translated).filter(
      ({ model, said = "" }) => !markersIn(model).every((marker) => markersIn(said).includes(marker)),
    );
    expect(untold).toEqual([]);
  });

  it("are not English, but for words that are alike for a reason", () => {
    const same = pairs(translated)
      .filter(({ model, said }) => said === model && /\p{L}/u.test(unfilled(model)))
      .filter(({ model }) => alike[uncounted(model)] === undefined);
    expect(same.map(({ where, said }) => `${where}: ${said}`)).toEqual([]);
  });

  it("have no English words left in them", () => {
    const leftover = /\b(the|and|of|with|yet|this|what|when|been)\b/i;
    expect(pairs(translated).filter(({ said = "" }) => leftover.test(unfilled(said)))).toEqual([]);
  });

  it("need every exception that is made for words that are alike", () => {
    const same = new Set(
      pairs(translated)
        .filter(({ model, said }) => said === model)
        .map(({ model }) => uncounted(model)),
    );
    expect(Object.keys(alike).filter((text) => !same.has(text))).toEqual([]);
  });
});
