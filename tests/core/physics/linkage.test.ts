import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  constantLinkage,
  createCoilSpring,
  createLinkage,
  PhysicsError,
  type Spring,
  staticSag,
  wheelSpring,
} from "#core/physics/index.ts";
import { metres, newtons, newtonsPerMetre } from "#core/quantity/quantity.ts";
import { between, linkages } from "./arbitrary-springs.ts";

const shockFor = (stroke: number): Spring =>
  createCoilSpring({ rate: newtonsPerMetre(75_000), preload: metres(0.001), stroke: metres(stroke) });

describe("a linkage", () => {
  it("gives the travel back that a stroke came from", () => {
    fc.assert(
      fc.property(linkages, between(0, 1), (linkage, part) => {
        const travel = metres(linkage.wheelTravel * part);
        expect(linkage.wheelTravelAt(linkage.shockStrokeAt(travel))).toBeCloseTo(travel, 12);
      }),
    );
  });

  it("has the leverage ratio that a numerical derivative of its travel gives", () => {
    fc.assert(
      fc.property(linkages, between(0.01, 0.99), (linkage, part) => {
        const travel = linkage.wheelTravel * part;
        const width = linkage.wheelTravel * 1e-6;
        const strokes = linkage.shockStrokeAt(metres(travel + width)) - linkage.shockStrokeAt(metres(travel - width));
        expect((2 * width) / strokes / linkage.leverageRatioAt(metres(travel))).toBeCloseTo(1, 4);
      }),
    );
  });

  it("never leaves the range of the two points around it", () => {
    const linkage = createLinkage(
      [3.1, 2.4, 2.6].map((leverageRatio, index) => ({ wheelTravel: metres(index * 0.08), leverageRatio })),
    );
    for (let step = 0; step <= 80; step += 1) {
      expect(linkage.leverageRatioAt(metres(step / 1000))).toBeGreaterThanOrEqual(2.4 - 1e-12);
      expect(linkage.leverageRatioAt(metres(step / 1000))).toBeLessThanOrEqual(3.1);
      expect(linkage.leverageRatioAt(metres(0.08 + step / 1000))).toBeLessThanOrEqual(2.6 + 1e-12);
    }
  });

  it("with one ratio is the quotient of travel and stroke throughout", () => {
    const linkage = constantLinkage(metres(0.16), metres(0.064));
    expect(linkage.leverageRatioAt(metres(0.1))).toBeCloseTo(2.5, 12);
    expect(linkage.shockStroke).toBeCloseTo(0.064, 12);
    expect(linkage.shockStrokeAt(metres(0.04))).toBeCloseTo(0.016, 12);
  });

  it("refuses a curve that does not fit the shock's stroke, and says by how much", () => {
    const points = [2.8, 2.4].map((leverageRatio, index) => ({ wheelTravel: metres(index * 0.16), leverageRatio }));
    expect(createLinkage(points, { stroke: metres(0.062) }).shockStroke).toBeCloseTo(0.0617, 4);
    expect(() => createLinkage(points, { stroke: metres(0.055) })).toThrow(/61\.7 mm.*55\.0 mm/);
  });

  it.each([
    ["one point", [[0, 2.5]]],
    [
      "points that do not rise",
      [
        [0, 2.5],
        [0.1, 2.4],
        [0.1, 2.3],
      ],
    ],
    [
      "a first point that is not at no travel",
      [
        [0.01, 2.5],
        [0.1, 2.4],
      ],
    ],
    [
      "a ratio of nothing",
      [
        [0, 2.5],
        [0.1, 0],
      ],
    ],
    [
      "a ratio that is no number",
      [
        [0, Number.NaN],
        [0.1, 2],
      ],
    ],
  ] as [string, [number, number][]][])("refuses %s", (_name, points) => {
    const made = () =>
      createLinkage(points.map(([travel, leverageRatio]) => ({ wheelTravel: metres(travel), leverageRatio })));
    expect(made).toThrow(PhysicsError);
  });

  it("refuses a travel beyond its end", () => {
    expect(() => constantLinkage(metres(0.16), metres(0.064)).shockStrokeAt(metres(0.17))).toThrow(PhysicsError);
  });
});

describe("a shock's spring at the wheel", () => {
  it("does the same work as at the shock: the integral of its force is the shock's energy", () => {
    fc.assert(
      fc.property(linkages, between(0.05, 1), (linkage, part) => {
        const wheel = wheelSpring(shockFor(linkage.shockStroke), linkage);
        const travel = wheel.stroke * part;
        const pieces = 2000;
        let work = 0;
        for (let piece = 0; piece < pieces; piece += 1)
          work += (wheel.force(metres((travel * (piece + 0.5)) / pieces)) * travel) / pieces;
        expect(Math.abs(work / wheel.energy(metres(travel)) - 1)).toBeLessThan(1e-4);
      }),
      { numRuns: 50 },
    );
  });

  it("has the rate that a numerical derivative of its force gives, between two points", () => {
    const linkage = createLinkage(
      [3.2, 2.6, 2.5, 2.2].map((leverageRatio, index) => ({ wheelTravel: metres(index * 0.05), leverageRatio })),
    );
    const wheel = wheelSpring(shockFor(linkage.shockStroke), linkage);
    for (const travel of [0.01, 0.03, 0.06, 0.09, 0.12, 0.149]) {
      const slope = (wheel.force(metres(travel + 1e-6)) - wheel.force(metres(travel - 1e-6))) / 2e-6;
      expect(wheel.rate(metres(travel)) / slope).toBeCloseTo(1, 6);
    }
  });

  it("ends where the shock's stroke ends, when that comes first", () => {
    const linkage = constantLinkage(metres(0.16), metres(0.064));
    const short = wheelSpring(shockFor(0.06), linkage);
    expect(short.stroke).toBeCloseTo(0.15, 12);
    expect(short.force(short.stroke)).toBeCloseTo((75_000 * 0.061) / 2.5, 6);
    expect(wheelSpring(shockFor(0.07), linkage).stroke).toBe(0.16);
  });

  it("sags where the shock carries the wheel's load times the leverage ratio", () => {
    const linkage = constantLinkage(metres(0.16), metres(0.064));
    const shock = shockFor(0.064);
    const sag = staticSag(wheelSpring(shock, linkage), newtons(500));
    if (!sag.possible) throw new Error(sag.reason);
    expect(shock.force(linkage.shockStrokeAt(sag.value))).toBeCloseTo(500 * 2.5, 6);
  });
});
