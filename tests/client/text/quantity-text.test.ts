import { afterEach, describe, expect, it } from "vitest";
import { differenceText, numberText, quantityText, unitText } from "#client/text/quantity-text.ts";
import { showUnits } from "#client/text/shown-units.ts";
import { entryField, numberIn } from "#client/widgets/entry-field.ts";

afterEach(() => showUnits({}));

describe("A quantity in words", () => {
  it("stays as it was typed for whom has chosen no unit", () => {
    expect(quantityText({ value: 62.5, unit: "psi" })).toBe("62.5 psi");
    expect(quantityText({ value: 4.27, unit: "bar" })).toBe("4.27 bar");
  });

  // NIST SP 811 (2008), appendix B.8: 1 psi = 6.894 757 kPa, 1 bar = 100 kPa, 1 lb = 0.453 592 37 kg; B.9: t/°C = (t/°F - 32)/1.8.
  it.each([
    [{ value: 62, unit: "psi" }, { pressure: "bar" }, "4.27 bar"],
    [{ value: 62, unit: "psi" }, { pressure: "kPa" }, "427 kPa"],
    [{ value: 1.8, unit: "bar" }, { pressure: "psi" }, "26.1 psi"],
    [{ value: 72, unit: "kg" }, { mass: "lb" }, "158.7 lb"],
    [{ value: 22, unit: "°C" }, { temperature: "°F" }, "72 °F"],
    [{ value: 9, unit: "clicks" }, { pressure: "bar" }, "9 clicks"],
  ] as const)("is converted for the eye: %o with %o", (quantity, units, text) => {
    showUnits(units);
    expect(quantityText(quantity)).toBe(text);
  });

  it("has differences without the zero of its unit: 5 °C more are 9 °F more", () => {
    showUnits({ temperature: "°F", pressure: "bar" });
    expect(differenceText({ value: 5, unit: "°C" })).toBe("+9 °F");
    expect(differenceText({ value: -5, unit: "psi" })).toBe("−0.34 bar");
    expect(differenceText({ value: 0, unit: "psi" })).toBe("0 bar");
  });

  it("has no sign before what rounds to nothing", () => {
    showUnits({ temperature: "°F" });
    // -17.8 °C are -0.04 °F.
    expect(quantityText({ value: -17.8, unit: "°C" })).toBe("0 °F");
    expect(quantityText({ value: -18.4, unit: "°C" })).toBe("−1 °F");
    expect(numberText(-0.001)).toBe("0");
  });

  it("counts one click and two clicks", () => {
    expect([1, -1, 2, 0].map((value) => unitText({ value, unit: "clicks" }))).toEqual([
      "click",
      "click",
      "clicks",
      "clicks",
    ]);
  });
});

describe("The field for a value", () => {
  const fork = { unit: "psi", step: 1, minimum: 20, maximum: 110 } as const;

  it("is the adjuster's own for whom has chosen no unit", () => {
    expect(entryField(fork)).toEqual(fork);
  });

  it("is in the reader's unit, in round steps no longer than the adjuster's, inside its limits", () => {
    showUnits({ pressure: "bar" });
    // 1 psi = 0.069 bar; 20 psi = 1.379 bar; 110 psi = 7.584 bar.
    expect(entryField(fork)).toEqual({ unit: "bar", step: 0.05, minimum: 1.4, maximum: 7.55 });
    showUnits({ pressure: "kPa" });
    expect(entryField(fork)).toEqual({ unit: "kPa", step: 5, minimum: 140, maximum: 755 });
    showUnits({ temperature: "°F" });
    expect(entryField({ unit: "°C", step: 1, minimum: -30, maximum: 55 })).toEqual({
      unit: "°F",
      step: 1,
      minimum: -22,
      maximum: 131,
    });
  });

  it("starts from the value as it was typed, where it was typed in this unit", () => {
    showUnits({ pressure: "bar" });
    expect(numberIn(entryField(fork), { value: 4.275, unit: "bar" })).toBe(4.275);
    expect(numberIn(entryField(fork), { value: 62, unit: "psi" })).toBe(4.27);
    expect(numberIn(entryField(fork), undefined)).toBeUndefined();
  });
});
