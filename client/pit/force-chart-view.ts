/** Where everything stands in the chart of a spring's force, before and after an adjustment. */
import { forceChart as words } from "#client/text/force-chart.ts";
import type { ForceCurves } from "#core/advice/force-curves.ts";
import type { Prediction } from "#core/advice/prediction.ts";
import type { ForcePoint } from "#core/physics/spring.ts";

/** Width and height of the drawing, and the edges of the plot in it, in its own units; text is 15 of them high. */
export const drawing = { width: 360, height: 270, left: 58, right: 338, top: 34, bottom: 226 } as const;

/** A line of the grid, with its number. */
export interface Tick {
  readonly at: number;
  readonly label: string;
}

/** A stroke that matters, on the curve that belongs to it. */
export interface Mark {
  readonly x: number;
  readonly y: number;
  /** Only those of the curve afterwards have one. */
  readonly label: string | undefined;
}

export interface ForceChartView {
  /** Points of a polyline, as SVG has them. */
  readonly before: string;
  readonly after: string;
  readonly strokes: readonly Tick[];
  readonly forces: readonly Tick[];
  readonly marksBefore: readonly Mark[];
  readonly marksAfter: readonly Mark[];
  /** Where the curves are furthest apart: a small step is hardly seen in the drawing. */
  readonly difference: string;
  readonly described: string;
}

/** Lines of the grid along each axis, at most. */
const MOST_TICKS = 6;

export function forceChartView(
  { before, after }: ForceCurves,
  now: Prediction | undefined,
  then: Prediction | undefined,
): ForceChartView {
  const strokeMm = (last(before).stroke ?? 0) * 1000;
  const mostForce = Math.max(...before.map(({ force }) => force), ...after.map(({ force }) => force));
  const strokes = ticks(strokeMm);
  const forces = ticks(mostForce);
  const topForce = Math.max(mostForce, last(forces) ?? 0);
  const x = (mm: number): number => drawing.left + (mm / strokeMm) * (drawing.right - drawing.left);
  const y = (newtons: number): number => drawing.bottom - (newtons / topForce) * (drawing.bottom - drawing.top);
  const line = (curve: readonly ForcePoint[]): string =>
    curve.map(({ stroke, force }) => `${rounded(x(stroke * 1000))},${rounded(y(force))}`).join(" ");
  const mark = (curve: readonly ForcePoint[], stroke: number | undefined, label: string | undefined): Mark[] =>
    stroke === undefined ? [] : [{ x: rounded(x(stroke * 1000)), y: rounded(y(forceAt(curve, stroke))), label }];
  const labelOf = (word: string, stroke: number | undefined): string | undefined =>
    stroke === undefined ? undefined : `${word} ${words.millimetres(Math.round(stroke * 1000))}`;
  return {
    before: line(before),
    after: line(after),
    strokes: strokes.map((mm) => ({ at: rounded(x(mm)), label: String(mm) })),
    forces: forces.map((newtons) => ({ at: rounded(y(newtons)), label: String(newtons) })),
    marksBefore: [...mark(before, now?.sag, undefined), ...mark(before, now?.strokeUsed, undefined)],
    marksAfter: [
      ...mark(after, then?.sag, labelOf(words.sag, then?.sag)),
      ...mark(after, then?.strokeUsed, labelOf(words.travel, then?.strokeUsed)),
    ],
    difference: differenceInWords(before, after),
    described: words.described(inWords(before), inWords(after), words.millimetres(Math.round(strokeMm))),
  };
}

/** Round numbers from 0 to at most `most`: steps of 1, 2 or 5 times a power of ten. */
export function ticks(most: number): readonly number[] {
  if (!(most > 0)) return [0];
  const rough = most / MOST_TICKS;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((factor) => factor * power >= rough) ?? 10) * power;
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, index) => Math.round(index * step * 1e6) / 1e6);
}

/** Between the points of the curve the force is taken as straight, as it is drawn. */
function forceAt(curve: readonly ForcePoint[], stroke: number): number {
  const index = curve.findIndex((point) => point.stroke >= stroke);
  const next = curve[index] ?? last(curve);
  const previous = curve[index - 1] ?? next;
  const span = next.stroke - previous.stroke;
  return span === 0 ? next.force : previous.force + ((stroke - previous.stroke) / span) * (next.force - previous.force);
}

function differenceInWords(before: readonly ForcePoint[], after: readonly ForcePoint[]): string {
  let most = { stroke: 0, newtons: 0 };
  for (const { stroke, force } of after) {
    const apart = force - forceAt(before, stroke);
    if (Math.abs(apart) > Math.abs(most.newtons)) most = { stroke, newtons: apart };
  }
  const newtons = Math.round(most.newtons);
  return newtons === 0 ? words.same : words.difference(newtons, words.millimetres(Math.round(most.stroke * 1000)));
}

function inWords(curve: readonly ForcePoint[]): string {
  const full = last(curve).stroke;
  const at = (share: number): string => words.newtons(Math.round(forceAt(curve, full * share) / 10) * 10);
  const { shares } = words;
  return [words.at(shares.half, at(0.5)), words.at(shares.nineTenths, at(0.9)), words.at(shares.full, at(1))].join(
    ", ",
  );
}

function last<Entry>(list: readonly Entry[]): Entry {
  const entry = list.at(-1);
  if (entry === undefined) throw new Error("A curve has at least two points.");
  return entry;
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}
