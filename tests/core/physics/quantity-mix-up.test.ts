import { describe, expect, it } from "vitest";
import {
  createCoilSpring,
  firstReading,
  gaugeToSetNow,
  pressureAtTemperature,
  staticSag,
} from "#core/physics/index.ts";
import {
  absolutePascals,
  cubicMetres,
  gaugePascals,
  kelvins,
  metres,
  newtons,
  newtonsPerMetre,
} from "#core/quantity/quantity.ts";

/*
 * The compiler is the test here: each line below an expected error must not
 * compile, or the type check fails. What would come out if it did is shown
 * beside it, so that it is plain why it must not.
 */

const gauge = gaugePascals(4e5);
const ambient = absolutePascals(101_325);
const warm = { temperature: kelvins(303), ambient };
const cold = { temperature: kelvins(283), ambient };

describe("gauge and absolute pressure", () => {
  it("do not stand for each other in the gas law, where it would be 7 kPa wrong", () => {
    const right = pressureAtTemperature(absolutePascals(gauge + ambient), kelvins(283), kelvins(303)) - ambient;
    // @ts-expect-error a gauge pressure is not an absolute one
    const wrong = pressureAtTemperature(gauge, kelvins(283), kelvins(303));
    expect(right - wrong).toBeCloseTo(7160, -1);
  });

  it("do not stand for each other in the fill-now correction", () => {
    const right = gaugeToSetNow({ wanted: gauge, wantedAt: warm, now: cold });
    // @ts-expect-error an absolute pressure is not a gauge reading
    const wrong = gaugeToSetNow({ wanted: absolutePascals(gauge + ambient), wantedAt: warm, now: cold });
    expect(wrong).not.toBeCloseTo(right, -3);
  });

  it("do not stand for each other as the ambient pressure of a pump", () => {
    const volumes = { chamberVolume: cubicMetres(30e-6), hoseVolume: cubicMetres(3e-6) };
    // @ts-expect-error the ambient pressure is absolute
    expect(() => firstReading({ ...volumes, chamberPressure: gauge, ambient: gaugePascals(0) })).toThrow(/Ambient/);
  });
});

describe("other quantities", () => {
  const coil = createCoilSpring({ rate: newtonsPerMetre(8000), preload: metres(0), stroke: metres(0.1) });

  it("do not stand for each other: a length is no load and a force no stroke", () => {
    // @ts-expect-error a length is not a force
    expect(staticSag(coil, metres(0.03))).not.toEqual(staticSag(coil, newtons(240)));
    // @ts-expect-error a force is not a length
    expect(() => coil.force(newtons(240))).toThrow(/Stroke/);
  });

  it("do not come out of a plain number", () => {
    // @ts-expect-error a number without a unit is no length
    expect(coil.force(0.03)).toBe(coil.force(metres(0.03)));
  });
});
