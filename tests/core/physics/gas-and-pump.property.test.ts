import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chamberBeforeReading,
  expectedFirstReading,
  firstReading,
  gaugeAfter,
  gaugeToSetNow,
  judgeReading,
  polytropicPressure,
  polytropicWork,
} from "#core/physics/index.ts";
import { absolutePascals, cubicMetres, gaugePascals, kelvins } from "#core/quantity/quantity.ts";
import { ambients, between, exponents } from "./arbitrary-springs.ts";

const states = fc.record({ temperature: between(258, 323).map(kelvins), ambient: ambients });
const gauges = between(1e5, 2.5e6).map(gaugePascals);

describe("the fill-now correction", () => {
  it("is undone by what the gauge shows then", () => {
    fc.assert(
      fc.property(gauges, states, states, (wanted, wantedAt, now) => {
        const set = gaugeToSetNow({ wanted, wantedAt, now });
        expect(gaugeAfter({ set, setAt: now, readAt: wantedAt }) / wanted).toBeCloseTo(1, 10);
      }),
    );
  });

  it("asks for less on a colder day than the ride, at one ambient pressure", () => {
    fc.assert(
      fc.property(gauges, states, between(1, 30), (wanted, wantedAt, colder) => {
        const now = { ...wantedAt, temperature: kelvins(wantedAt.temperature - colder) };
        expect(gaugeToSetNow({ wanted, wantedAt, now })).toBeLessThan(wanted);
      }),
    );
  });

  it("asks for less in the valley than at the top, at one temperature", () => {
    fc.assert(
      fc.property(gauges, states, between(1000, 20_000), (wanted, wantedAt, deeper) => {
        const now = { ...wantedAt, ambient: absolutePascals(wantedAt.ambient + deeper) };
        expect(gaugeToSetNow({ wanted, wantedAt, now })).toBeCloseTo(wanted - deeper, 3);
      }),
    );
  });
});

describe("a gas that is compressed", () => {
  it("comes back to its pressure, with the work of the way in given back", () => {
    fc.assert(
      fc.property(between(1e5, 2e6), between(1e-5, 1e-3), between(1e-5, 1e-3), exponents, (pressure, from, to, n) => {
        const [start, end] = [cubicMetres(from), cubicMetres(to)];
        const inside = polytropicPressure(absolutePascals(pressure), start, end, n);
        expect(polytropicPressure(inside, end, start, n) / pressure).toBeCloseTo(1, 10);
        const work = polytropicWork(absolutePascals(pressure), start, end, n);
        expect(work + polytropicWork(inside, end, start, n)).toBeCloseTo(0, 6);
      }),
    );
  });
});

describe("a pump that goes on", () => {
  const connections = fc.record({
    chamberVolume: between(1e-5, 3e-4).map(cubicMetres),
    hoseVolume: between(0, 1e-5).map(cubicMetres),
    ambient: ambients,
  });

  it("never shows more than the chamber had, and tells what it had", () => {
    fc.assert(
      fc.property(connections, gauges, (connection, chamberPressure) => {
        const reading = firstReading({ ...connection, chamberPressure });
        expect(reading).toBeLessThanOrEqual(chamberPressure * (1 + 1e-12));
        expect(chamberBeforeReading({ ...connection, reading }) / chamberPressure).toBeCloseTo(1, 9);
      }),
    );
  });

  it("shows at the same place and temperature what one connection costs, and no leak", () => {
    fc.assert(
      fc.property(connections, gauges, between(258, 323), (connection, set, degrees) => {
        const now = { temperature: kelvins(degrees), ambient: connection.ambient };
        const expected = expectedFirstReading({ ...connection, set, setAt: now, now });
        const read = firstReading({ ...connection, chamberPressure: set });
        expect(expected / read).toBeCloseTo(1, 9);
        expect(judgeReading({ expected, read, tolerance: gaugePascals(1) }).verdict).toBe("as expected");
      }),
    );
  });
});
