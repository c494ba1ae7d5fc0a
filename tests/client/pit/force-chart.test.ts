import { describe, expect, test } from "vitest";
import { drawing, forceChartView, ticks } from "#client/pit/force-chart-view.ts";
import type { Prediction } from "#core/advice/prediction.ts";
import type { ForcePoint } from "#core/physics/spring.ts";
import { metres, newtons } from "#core/quantity/quantity.ts";

/** A coil spring: force in proportion to the stroke, 200 mm long. */
function coil(newtonsPerMetre: number): readonly ForcePoint[] {
  return Array.from({ length: 21 }, (_, index) => {
    const stroke = 0.2 * (index / 20);
    return { stroke: metres(stroke), force: newtons(newtonsPerMetre * stroke) };
  });
}

function prediction(sagMm: number, usedMm?: number): Prediction {
  return {
    sag: metres(sagMm / 1000),
    forceAtHalf: newtons(0),
    forceAtNineTenths: newtons(0),
    forceAtFull: newtons(0),
    ...(usedMm !== undefined && { strokeUsed: metres(usedMm / 1000) }),
  };
}

const pointsOf = (line: string) => line.split(" ").map((point) => point.split(",").map(Number) as [number, number]);

describe("the lines of a grid", () => {
  test.each([
    [200, [0, 50, 100, 150, 200]],
    [160, [0, 50, 100, 150]],
    [2000, [0, 500, 1000, 1500, 2000]],
    [3100, [0, 1000, 2000, 3000]],
    [0.6, [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6]],
    [0, [0]],
  ])("up to %d stand at round numbers", (most, expected) => {
    expect(ticks(most)).toEqual(expected);
  });
});

describe("the chart of a spring's force", () => {
  const view = forceChartView(
    { before: coil(5000), after: coil(10_000) },
    prediction(60, 180),
    prediction(40, undefined),
  );

  test("begins both curves at the corner, and draws twice the force twice as high", () => {
    const [before, after] = [pointsOf(view.before), pointsOf(view.after)];
    expect(before[0]).toEqual([drawing.left, drawing.bottom]);
    expect(after[0]).toEqual([drawing.left, drawing.bottom]);
    const height = (points: [number, number][]) => drawing.bottom - (points.at(-1)?.[1] ?? 0);
    expect(height(after) / height(before)).toBeCloseTo(2, 2);
    expect(after.at(-1)).toEqual([drawing.right, drawing.top]);
  });

  test("marks sag and travel on the curve that they belong to, and names only those afterwards", () => {
    const quarter = drawing.left + 0.3 * (drawing.right - drawing.left);
    expect(view.marksBefore).toHaveLength(2);
    expect(view.marksBefore[0]?.x).toBeCloseTo(quarter, 1);
    expect(view.marksBefore.map(({ label }) => label)).toEqual([undefined, undefined]);
    expect(view.marksAfter).toMatchObject([{ label: "Sag 40 mm" }]);
    const [mark] = view.marksAfter;
    // 10 000 N/m at 40 mm are 400 N of the 2000 N that reach the top.
    expect(mark?.y).toBeCloseTo(drawing.bottom - 0.2 * (drawing.bottom - drawing.top), 1);
  });

  test("says in words what the curves show", () => {
    expect(view.described).toBe(
      "Force of the spring over its stroke of 200 mm, while riding. " +
        "Now: 500 N at half, 900 N at 90 %, 1000 N at the end. Then: 1000 N at half, 1800 N at 90 %, 2000 N at the end.",
    );
  });

  test("says where the curves are furthest apart, which a small step does not show", () => {
    expect(view.difference).toBe("Furthest apart at 200 mm: 1000 N more then.");
    const less = forceChartView({ before: coil(5100), after: coil(5000) }, undefined, undefined);
    expect(less.difference).toBe("Furthest apart at 200 mm: 20 N less then.");
    const same = forceChartView({ before: coil(5000), after: coil(5001) }, undefined, undefined);
    expect(same.difference).toBe("The two lines are less than 1 N apart.");
  });

  test("stays within its drawing whatever the forces", () => {
    for (const rate of [1, 333, 54_321]) {
      const { after } = forceChartView({ before: coil(rate / 2), after: coil(rate) }, undefined, undefined);
      for (const [x, y] of pointsOf(after)) {
        expect(x).toBeGreaterThanOrEqual(drawing.left);
        expect(x).toBeLessThanOrEqual(drawing.right);
        expect(y).toBeGreaterThanOrEqual(drawing.top);
        expect(y).toBeLessThanOrEqual(drawing.bottom);
      }
    }
  });
});
