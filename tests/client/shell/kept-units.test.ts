import { expect, it } from "vitest";
import { storedUnits, storeUnits } from "#client/shell/kept-units.ts";

function storage() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

it("two people with one device each keep their own units", () => {
  const shared = storage();
  storeUnits(shared, "kim", { pressure: "bar" });
  storeUnits(shared, "lou", { mass: "lb", temperature: "°F" });
  expect(storedUnits(shared, "kim")).toEqual({ pressure: "bar" });
  expect(storedUnits(shared, "lou")).toEqual({ mass: "lb", temperature: "°F" });
  expect(storedUnits(shared, undefined)).toEqual({});
});

it("what cannot be read, or is no unit of its kind, counts as no choice", () => {
  const shared = storage();
  shared.kept.set("pitslate.units.kim", "{");
  shared.kept.set("pitslate.units.lou", '{"pressure":"kg","mass":"lb"}');
  expect(storedUnits(shared, "kim")).toEqual({});
  expect(storedUnits(shared, "lou")).toEqual({ mass: "lb" });
});
