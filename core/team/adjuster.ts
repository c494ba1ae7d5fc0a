/**
 * An adjuster is one thing that a mechanic can set on a part: a chamber's
 * pressure, the number of volume spacers, a damper's clicks.
 *
 * Clicks are counted from fully closed, as is common practice: more clicks are
 * a more open damper, hence less damping.
 */
import * as z from "zod/mini";
import { type Dimension, type TypedQuantity, type Unit, units } from "#core/quantity/unit.ts";
import { type Place, places } from "./place.ts";
import { unsettable } from "./settable-range.ts";

export const adjusterKinds = [
  "main-pressure",
  "secondary-pressure",
  "volume-spacers",
  "spring-rate",
  "preload",
  "rebound",
  "low-speed-compression",
  "high-speed-compression",
  "tyre-pressure",
] as const;
export type AdjusterKind = (typeof adjusterKinds)[number];

const dimensionByKind: Record<AdjusterKind, Dimension> = {
  "main-pressure": "pressure",
  "secondary-pressure": "pressure",
  "volume-spacers": "spacers",
  "spring-rate": "spring rate",
  preload: "turns",
  rebound: "clicks",
  "low-speed-compression": "clicks",
  "high-speed-compression": "clicks",
  "tyre-pressure": "pressure",
};

/** What an adjuster of `kind` is measured in. */
export function dimensionOfKind(kind: AdjusterKind): Dimension {
  return dimensionByKind[kind];
}

/** True for a damper's adjuster, which is counted in clicks from closed. */
export function isDamperAdjuster(kind: AdjusterKind): boolean {
  return dimensionByKind[kind] === "clicks";
}

/** The finest step of an adjuster, in its unit, and the most steps that it may have; common practice, no source. */
const FINEST_STEP = 0.001;
const MOST_STEPS = 10_000;

/**
 * One adjuster of a part. All numbers are in `unit`.
 * - `minimum`, `maximum`: what the adjuster can be set to; for a pressure the maximum is the part's marked maximum.
 * - `step`: the finest difference that can be set and read.
 * - `felt`: the smallest change that a rider feels.
 * - `large`: the largest change to make at a time.
 * - `perClick`: relative change of the damping coefficient per click; absent until measured.
 */
export const adjusterSchema = z
  .object({
    kind: z.enum(adjusterKinds),
    unit: z.enum(units as [Unit, ...Unit[]], { error: `allowed units: ${units.join(", ")}` }),
    minimum: z.number(),
    maximum: z.number(),
    step: z.number().check(z.gte(FINEST_STEP)),
    felt: z.number().check(z.positive()),
    large: z.number().check(z.positive()),
    perClick: z.optional(z.number().check(z.gt(0), z.lt(1))),
  })
  .check(
    z.refine((adjuster) => unsettableEnd(adjuster) === undefined, {
      error: (issue) => unsettableEnd(issue.input as Ends),
    }),
    z.refine((adjuster) => adjuster.minimum < adjuster.maximum, { error: "the minimum must be below the maximum" }),
    z.refine((adjuster) => adjuster.step <= adjuster.felt && adjuster.felt <= adjuster.large, {
      error: "step, felt and large must not decrease in this order",
    }),
    // What looks for a value tries the steps one by one.
    z.refine(({ minimum, maximum, step, large }) => Math.max(maximum - minimum, large) / step <= MOST_STEPS, {
      error: `an adjuster has at most ${MOST_STEPS} steps`,
    }),
  );
export type Adjuster = z.infer<typeof adjusterSchema>;

type Ends = { readonly kind: AdjusterKind; readonly unit: Unit; readonly minimum: number; readonly maximum: number };

/** The first end of the range that can never be set, in words. */
function unsettableEnd({ kind, unit, minimum, maximum }: Ends): string | undefined {
  const why =
    unsettable(dimensionByKind[kind], { value: minimum, unit }) ??
    unsettable(dimensionByKind[kind], { value: maximum, unit });
  return why && `${kind} ${why}`;
}

/** Why `quantity` can never be what the adjuster at `path` is set to, in words; undefined when some part may allow it. */
export function unsettableAt(path: string, quantity: TypedQuantity): string | undefined {
  const address = parseAdjusterPath(path);
  const why = address && unsettable(dimensionByKind[address.kind], quantity);
  return why && `${path} ${why}`;
}

/** An adjuster's address on a bike, such as `fork.main-pressure`. */
export type AdjusterPath = `${Place}.${AdjusterKind}`;

/** Every possible address, place by place. */
export const adjusterPaths: readonly AdjusterPath[] = places.flatMap((place) =>
  adjusterKinds.map((kind) => adjusterPath(place, kind)),
);

/** The address of `kind` at `place`. */
export function adjusterPath(place: Place, kind: AdjusterKind): AdjusterPath {
  return `${place}.${kind}`;
}

/** The place and kind in an address, or undefined when `text` is none. */
export function parseAdjusterPath(text: string): { readonly place: Place; readonly kind: AdjusterKind } | undefined {
  const dot = text.indexOf(".");
  const place = places.find((candidate) => candidate === text.slice(0, dot));
  const kind = adjusterKinds.find((candidate) => candidate === text.slice(dot + 1));
  return dot > 0 && place && kind ? { place, kind } : undefined;
}

/** True when `text` is an {@link AdjusterPath}. */
export function isAdjusterPath(text: string): text is AdjusterPath {
  return parseAdjusterPath(text) !== undefined;
}
