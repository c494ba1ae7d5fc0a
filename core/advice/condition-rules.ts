/**
 * What ground and course ask for beyond the rider's own baselines, as data.
 *
 * Sizes are in multiples of the adjuster's `felt` step, so that a part that is
 * coarse to adjust is moved by what can be felt on it. All are common practice,
 * no source; the rider's own baseline for wet, steep or jumpy courses always
 * comes first, and these fill in only what it does not hold.
 */
import type { AdjusterKind } from "#core/team/adjuster.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { Ground } from "#core/team/ground.ts";
import type { Place } from "#core/team/place.ts";

export interface ConditionMove {
  readonly places: readonly Place[];
  readonly adjuster: AdjusterKind;
  /** Multiples of the adjuster's felt step; negative lowers (or closes a damper). */
  readonly felt: number;
}

export interface ConditionRule {
  readonly id: string;
  readonly when:
    | { readonly type: "ground"; readonly grounds: readonly Ground[] }
    | { readonly type: "no own baseline"; readonly courseType: CourseType };
  /**
   * The course type whose own baseline already holds this: the rule then counts only for the part of the course that
   * is not of this type. A baseline that was found on the rule's ground holds it too, whatever its type.
   */
  readonly heldBy?: CourseType;
  readonly moves: readonly ConditionMove[];
  /** The reason in one sentence. */
  readonly reason: string;
}

const suspension = ["fork", "shock"] as const;
const tyres = ["front-tyre", "rear-tyre"] as const;

export const conditionRules: readonly ConditionRule[] = [
  {
    id: "ground-wet-tyres",
    when: { type: "ground", grounds: ["wet", "mud"] },
    heldBy: "wet",
    moves: [{ places: tyres, adjuster: "tyre-pressure", felt: -1 }],
    reason: "Wet ground: a little less tyre pressure lets the tread reach into it.",
  },
  {
    id: "ground-wet-main",
    when: { type: "ground", grounds: ["wet", "mud"] },
    heldBy: "wet",
    moves: [{ places: suspension, adjuster: "main-pressure", felt: -1 }],
    reason: "Slippery ground: a little less main pressure keeps the wheel on the ground.",
  },
  {
    id: "ground-damp-tyres",
    when: { type: "ground", grounds: ["damp"] },
    heldBy: "wet",
    moves: [{ places: tyres, adjuster: "tyre-pressure", felt: -0.5 }],
    reason: "Damp ground: half a step less tyre pressure for grip.",
  },
  {
    id: "ground-dust-main",
    when: { type: "ground", grounds: ["dry dust"] },
    moves: [{ places: suspension, adjuster: "main-pressure", felt: -1 }],
    reason: "Very dry and loose ground: a little less main pressure for grip.",
  },
  {
    id: "ground-dust-front-tyre",
    when: { type: "ground", grounds: ["dry dust"] },
    moves: [{ places: ["front-tyre"], adjuster: "tyre-pressure", felt: -0.5 }],
    reason: "Loose dust over hard ground: half a step less in the front tyre for grip.",
  },
  {
    id: "ground-mud-secondary",
    when: { type: "ground", grounds: ["mud"] },
    heldBy: "wet",
    moves: [{ places: suspension, adjuster: "secondary-pressure", felt: -1 }],
    reason: "Mud is slow and its hits are soft: less secondary pressure, so that the travel is used.",
  },
  {
    id: "no-baseline-steep",
    when: { type: "no own baseline", courseType: "steep" },
    moves: [
      { places: suspension, adjuster: "secondary-pressure", felt: 2 },
      { places: ["fork"], adjuster: "low-speed-compression", felt: -1 },
    ],
    reason: "Steep parts without an own baseline: more secondary pressure, and a firmer fork against diving.",
  },
  {
    id: "no-baseline-jumpy",
    when: { type: "no own baseline", courseType: "jumpy" },
    moves: [{ places: suspension, adjuster: "secondary-pressure", felt: 2 }],
    reason: "Jumpy parts without an own baseline: more secondary pressure for the landings.",
  },
  {
    id: "no-baseline-wet",
    when: { type: "no own baseline", courseType: "wet" },
    moves: [
      { places: suspension, adjuster: "main-pressure", felt: -1 },
      { places: suspension, adjuster: "secondary-pressure", felt: -1 },
      { places: tyres, adjuster: "tyre-pressure", felt: -1 },
    ],
    reason: "Wet parts without an own baseline: a little less pressure everywhere for grip.",
  },
];
