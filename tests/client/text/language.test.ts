import { describe, expect, it } from "vitest";
import { chooseLanguage, chosenLanguage, languageFor } from "#client/text/language.ts";

describe("The language of a device", () => {
  it("is the one that was chosen on it, whatever its owner reads elsewhere", () => {
    const kept = new Map<string, string>();
    const storage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    };
    chooseLanguage(storage, "en");
    expect(languageFor(chosenLanguage(storage), ["nl"])).toBe("en");
  });

  it("is else the first that its owner reads and the program speaks", () => {
    expect(languageFor(null, ["nl-BE", "en-US"])).toBe("en");
    expect(languageFor(null, ["EN"])).toBe("en");
    expect(languageFor(null, ["de-CH", "en-US"])).toBe("de");
    expect(languageFor(null, ["it-CH", "de-CH"])).toBe("it");
  });

  it("is English when none of them is spoken, or what was kept is no language", () => {
    expect(languageFor(null, ["nl"])).toBe("en");
    expect(languageFor("klingon", [])).toBe("en");
  });
});
