/** A course's profile as a drawing and in words. */
import { courseProfile as words } from "#client/text/course-profile.ts";
import { formatNumber } from "#client/widgets/format.ts";
import { type CourseFacts, courseFacts, proposedSteepPart } from "#core/course/course-facts.ts";
import type { CourseProfile } from "#core/weekend/course-shape.ts";
import { ticks } from "../force-chart-view.ts";
import type { SectionDraft } from "./section-draft.ts";

/** Width and height of the drawing and the edges of its plot, in its own units; text is 15 of them high. */
export const drawing = { width: 360, height: 280, left: 52, right: 344, top: 34, bottom: 206 } as const;
/** Where the bars of the sections begin, and how far their two rows are apart. */
const bars = { top: 234, apart: 18 } as const;
/** Steep stretches that are told one by one. */
const MOST_TOLD = 5;

export interface ProfileView {
  /** Points of a polyline, as SVG has them. */
  readonly line: string;
  readonly steep: readonly string[];
  readonly heights: readonly Tick[];
  readonly distances: readonly Tick[];
  readonly sections: readonly Bar[];
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  readonly described: string;
  readonly proposal: Proposal;
  /** How far the line goes uphill, in m; undefined where it goes down. */
  readonly uphill: string | undefined;
}

interface Tick {
  readonly at: number;
  readonly label: string;
}

interface Bar {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly label: string;
}

interface Proposal {
  readonly part: number;
  readonly sentence: string;
}

export function profileView(profile: CourseProfile, sections: readonly SectionDraft[]): ProfileView {
  const facts = courseFacts(profile);
  const { length, highest, lowest } = facts;
  const heights = ticksBetween(lowest, highest);
  const floor = Math.min(lowest, heights[0] ?? lowest);
  const span = Math.max(highest, heights.at(-1) ?? highest) - floor || 1;
  const x = (at: number): number => tenth(drawing.left + (at / length) * (drawing.right - drawing.left));
  const y = (height: number): number =>
    tenth(drawing.bottom - ((height - floor) / span) * (drawing.bottom - drawing.top));
  const line = (points: CourseProfile["points"]): string =>
    points.map(([at, height]) => `${x(at)},${y(height)}`).join(" ");
  return {
    line: line(profile.points),
    steep: facts.steep.map(({ from, to }) => line(profile.points.filter(([at]) => at >= from && at <= to))),
    heights: heights.map((height) => ({ at: y(height), label: formatNumber(height) })),
    distances: ticks(length).map((at) => ({ at: x(at), label: formatNumber(at) })),
    sections: sections.flatMap(({ from, to }, index) =>
      from === undefined || to === undefined || from >= to || from >= length
        ? []
        : [
            {
              from: x(from),
              to: x(Math.min(to, length)),
              y: bars.top + (index % 2) * bars.apart,
              label: String(index + 1),
            },
          ],
    ),
    facts: factLines(facts),
    described: describe(profile, facts),
    proposal: proposalOf(facts),
    uphill: facts.drop < 0 ? whole(-facts.drop) : undefined,
  };
}

function factLines(facts: CourseFacts): ProfileView["facts"] {
  const { facts: names } = words;
  const { from, to, gradient } = facts.steepest;
  return [
    { name: names.length, value: words.metres(whole(facts.length)) },
    { name: names.drop, value: words.metres(whole(facts.drop)) },
    { name: names.climb, value: words.metres(whole(facts.climb)) },
    { name: names.slope, value: words.metres(whole(facts.slopeLength)) },
    { name: names.mean, value: words.percent(whole(facts.meanGradient * 100)) },
    { name: names.steepest, value: words.steepestAt(whole(gradient * 100), whole(from), whole(to)) },
  ];
}

function proposalOf({ steepShare }: CourseFacts): Proposal {
  const part = proposedSteepPart(steepShare);
  return { part, sentence: words.proposed(whole(steepShare * 100), formatNumber(part)) };
}

function describe({ points }: CourseProfile, { length, steep }: CourseFacts): string {
  const longest = [...steep].sort((a, b) => b.to - b.from - (a.to - a.from)).slice(0, MOST_TOLD);
  const told = longest.sort((a, b) => a.from - b.from).map(({ from, to }) => words.stretch(whole(from), whole(to)));
  const more = steep.length - told.length;
  return words.chart.described(whole(points[0]?.[1] ?? 0), whole(points.at(-1)?.[1] ?? 0), whole(length), [
    ...told,
    ...(more > 0 ? [words.chart.more(more)] : []),
  ]);
}

/** Round heights that lie within the two. */
function ticksBetween(lowest: number, highest: number): readonly number[] {
  const step = ticks(highest - lowest)[1];
  if (step === undefined) return [Math.round(lowest)];
  const first = Math.ceil(lowest / step);
  return Array.from({ length: Math.floor(highest / step) - first + 1 }, (_, index) => (first + index) * step);
}

function whole(value: number): string {
  return formatNumber(Math.round(value) || 0);
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
