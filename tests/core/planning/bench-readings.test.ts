import { describe, expect, it } from "vitest";
import { benchReadings } from "#core/planning/bench-readings.ts";
import type { Part } from "#core/team/part.ts";
import type { Setting } from "#core/weekend/setting.ts";

/**
 * Gay-Lussac at fixed volume, by hand: 24.0 psi gauge at 12 °C and sea level (14.696 psi) are 38.696 psi absolute;
 * at 21 °C 38.696 · 294.15 / 285.15 = 39.917, so the gauge shows 25.22 psi: 25.0 on a step of 0.5 psi.
 */
const tyre: Part = {
  archetype: "tyre",
  name: "A tyre",
  place: "rear-tyre",
  geometry: { tyreMarkedMaximum: { value: 45, unit: "psi" }, rimMarkedMaximum: { value: 38, unit: "psi" } },
  adjusters: [{ kind: "tyre-pressure", unit: "psi", minimum: 14, maximum: 38, step: 0.5, felt: 1, large: 3 }],
};
const at = (celsius: number) =>
  ({
    temperature: { value: celsius, unit: "°C" },
    altitude: { value: 0, unit: "m" },
  }) as const;

function readingOf(setting: Setting, celsius: number) {
  const heads = [] as const;
  const settings = new Map([["rear-tyre.tyre-pressure", { state: "settled", value: setting, heads }]] as const);
  return benchReadings({ parts: { "rear-tyre": tyre } }, settings, at(celsius))["rear-tyre.tyre-pressure"];
}

describe("a reading at the bench", () => {
  it("of a pressure that was set on a colder bench is higher", () => {
    const setting: Setting = { quantity: { value: 24, unit: "psi" }, standing: "on the bike", heldAt: at(12) };
    expect(readingOf(setting, 21)).toEqual({ value: 25, unit: "psi" });
  });

  it("is what was typed at the same temperature, in the unit it was typed in", () => {
    const setting: Setting = { quantity: { value: 1.63, unit: "bar" }, standing: "on the bike", heldAt: at(12) };
    expect(readingOf(setting, 12)).toEqual({ value: 1.63, unit: "bar" });
  });

  it("is what was typed when nobody wrote down where it was read", () => {
    const setting: Setting = { quantity: { value: 24, unit: "psi" }, standing: "on the bike" };
    expect(readingOf(setting, 21)).toEqual({ value: 24, unit: "psi" });
  });
});
