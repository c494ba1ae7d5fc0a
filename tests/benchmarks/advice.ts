/** How long the advice takes: the whole team's setups and feedback, one force curve, and memory over many derivations. */

import type { AdviceInput } from "#core/advice/adjustment.ts";
import { adviseOnRun } from "#core/advice/adjustments.ts";
import { endViews } from "#core/advice/end-view.ts";
import { suspensionModel } from "#core/advice/suspension-model.ts";
import { weekendSetup } from "#core/advice/weekend-setup.ts";
import { DEFAULT_RIDING_EXPONENT } from "#core/physics/gas.ts";
import { forceCurve } from "#core/physics/spring.ts";
import { metres } from "#core/quantity/quantity.ts";
import { mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import type { EndFeedback } from "#core/weekend/run.ts";
import { baseline, riderBike, setupValues } from "#tests/builders/bike.ts";
import { describe, line, measure } from "./measure.ts";

const RIDERS = 40;
const DERIVATIONS = 10_000;

const course = { temperature: { value: 24, unit: "°C" }, altitude: { value: 1500, unit: "m" } } as const;
const mix = { steep: 0.5, jumpy: 0.3, wet: 0.2 };
const baselines = { steep: baseline(), jumpy: baseline({ "fork.secondary-pressure": { value: 120, unit: "psi" } }) };

/** Feedback that fires many rules: measured and felt at both ends. */
const feedback: EndFeedback = {
  sag: { value: 40, unit: "mm" },
  bottomOuts: 3,
  middle: "harsh",
  returnSpeed: "too slow",
  grip: "slides",
  start: "harsh",
  noticed: ["rim strikes", "harsher hit by hit"],
};

/** The bench bike with two more adjusters, so that it has twelve. */
function twelveAdjusters(massKg: number): RiderBike {
  const mounted = riderBike({ massKg });
  const { shock } = mounted.parts;
  const clicks = shock?.adjusters.find(({ kind }) => kind === "rebound");
  if (!shock || !clicks) throw new Error("The bench bike has no shock with a rebound adjuster.");
  const more = (["low-speed-compression", "high-speed-compression"] as const).map((kind) => ({ ...clicks, kind }));
  return { ...mounted, parts: { ...mounted.parts, shock: { ...shock, adjusters: [...shock.adjusters, ...more] } } };
}

const bikes = Array.from({ length: RIDERS }, (_, index) => twelveAdjusters(60 + index));
const values = {
  ...setupValues,
  "shock.low-speed-compression": { value: 8, unit: "clicks" },
  "shock.high-speed-compression": { value: 8, unit: "clicks" },
} as const;

function inputFor(mounted: RiderBike): AdviceInput {
  return {
    mounted,
    run: {
      bike: mounted.bikeId,
      weekend: "w",
      session: "s",
      front: feedback,
      rear: { ...feedback, sag: { value: 20, unit: "mm" } },
    },
    course,
    onTheBike: values,
    riding: values,
    ridingAtRun: values,
    baseline: values,
    baselineSag: {},
    measuredBefore: { front: [], rear: [] },
    earlier: [],
  };
}

function deriveTeam(): number {
  let count = 0;
  for (const mounted of bikes) {
    const conditions = { air: course.temperature, bench: { value: 12, unit: "°C" }, ground: "dry dust" } as const;
    count += weekendSetup({ mounted, baselines, course: { mix, altitude: course.altitude }, conditions }).rows.length;
    count += adviseOnRun(inputFor(mounted)).adjustments.length;
  }
  return count;
}

/** Prints the report; true when every bound is kept. */
export function benchAdvice(): boolean {
  const [first] = bikes;
  if (!first) throw new Error("There is no bike.");
  const write = (text: string): void => void process.stdout.write(text);
  const fired = new Set(adviseOnRun(inputFor(first)).adjustments.map(({ rule }) => rule));
  write(
    line(
      `${RIDERS} riders, ${mountedAdjusters(first.parts).length} adjusters, ${fired.size} rules firing each`,
      `${endViews(inputFor(first)).front.symptoms.length} symptoms at the front`,
    ),
  );

  const team = measure(60, () => void deriveTeam());
  write(line("whole-team derivation: setups and advice", describe(team), { text: "50 ms", kept: team.median < 50 }));

  const spring = suspensionModel(first, "front", course)?.springWith(values, DEFAULT_RIDING_EXPONENT);
  if (!spring) throw new Error("The bench bike's fork makes no spring.");
  const curves = 200;
  const curve = measure(200, () => {
    for (let repeat = 0; repeat < curves; repeat += 1) forceCurve(spring, 200);
  });
  let sum = 0;
  const plain = measure(200, () => {
    for (let repeat = 0; repeat < curves; repeat += 1) {
      for (let index = 0; index < 200; index += 1) sum += spring.force(metres((spring.stroke * index) / 199));
    }
  });
  const one = {
    median: curve.median / curves,
    lowerQuartile: curve.lowerQuartile / curves,
    upperQuartile: curve.upperQuartile / curves,
  };
  write(line("force curve of 200 points", describe(one), { text: "60 µs", kept: one.median < 0.06 }));
  write(line("… as a ratio to a loop that only evaluates F(x) 200 times", (curve.median / plain.median).toFixed(2)));
  const evaluations = Math.round((team.median / plain.median) * curves * 200);
  write(
    line(
      "whole-team derivation, in evaluations of F(x)",
      `${evaluations} (${(evaluations / RIDERS).toFixed(0)} a rider)`,
    ),
  );
  if (Number.isNaN(sum)) throw new Error("A force is not a number.");

  const memory = memoryOver(DERIVATIONS, first);
  write(
    line(`memory after ${DERIVATIONS} derivations`, `${memory.growth >= 0 ? "+" : ""}${memory.growth.toFixed(2)} MB`, {
      text: "flat to 2 MB",
      kept: memory.growth < 2,
    }),
  );
  return team.median < 50 && one.median < 0.06 && memory.growth < 2;
}

function memoryOver(derivations: number, mounted: RiderBike): { readonly growth: number } {
  const collect = globalThis.gc;
  if (!collect) throw new Error("Memory can only be measured with --expose-gc.");
  const used = (): number => {
    collect();
    collect();
    return process.memoryUsage().heapUsed / 1e6;
  };
  for (let warm = 0; warm < 500; warm += 1) adviseOnRun(inputFor(mounted));
  const before = used();
  for (let index = 0; index < derivations; index += 1) adviseOnRun(inputFor(mounted));
  return { growth: used() - before };
}
