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
import type { RidingStyle } from "#core/team/riding-style.ts";

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
    | { readonly type: "no own baseline"; readonly courseType: CourseType }
    /** Air below a temperature, and by so much colder than at the baseline, both in °C. */
    | { readonly type: "cold"; readonly belowCelsius: number; readonly colderBy: number }
    /** The rider's style, where the baseline was ridden in another one. */
    | { readonly type: "riding style"; readonly style: RidingStyle };
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
    reason: "Damp ground: half a felt step less tyre pressure for grip.",
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
    reason: "Loose dust over hard ground: half a felt step less in the front tyre for grip.",
  },
  {
    id: "ground-mud-secondary",
    when: { type: "ground", grounds: ["mud"] },
    heldBy: "wet",
    moves: [{ places: suspension, adjuster: "secondary-pressure", felt: -1 }],
    reason: "Mud is slow and its hits are soft: less secondary pressure, so that the travel is used.",
  },
  {
    id: "ground-wet-secondary",
    when: { type: "ground", grounds: ["wet"] },
    heldBy: "wet",
    moves: [{ places: suspension, adjuster: "secondary-pressure", felt: -0.5 }],
    reason: "A wet course is ridden slower and hits softer: a little less secondary pressure.",
  },
  {
    id: "ground-damp-main",
    when: { type: "ground", grounds: ["damp"] },
    heldBy: "wet",
    moves: [{ places: ["fork"], adjuster: "main-pressure", felt: -0.5 }],
    reason: "Damp ground slides at the front first: half a felt step less in the fork.",
  },
  {
    id: "ground-wet-rear-low-speed",
    when: { type: "ground", grounds: ["wet", "mud"] },
    heldBy: "wet",
    moves: [{ places: ["shock"], adjuster: "low-speed-compression", felt: 1 }],
    reason: "On slippery ground the rear keeps contact with a little less low-speed compression.",
  },
  {
    id: "cold-oil",
    when: { type: "cold", belowCelsius: 5, colderBy: 10 },
    moves: [
      { places: suspension, adjuster: "rebound", felt: 1 },
      { places: suspension, adjuster: "low-speed-compression", felt: 1 },
    ],
    reason: "Cold oil is thicker and damps more: open the dampers by a felt step.",
  },
  {
    id: "style-calm",
    when: { type: "riding style", style: "calm" },
    moves: [
      { places: suspension, adjuster: "secondary-pressure", felt: -1 },
      { places: suspension, adjuster: "main-pressure", felt: -0.5 },
    ],
    reason: "A calm, static rider loads the bike less: less secondary pressure, and a little less main pressure.",
  },
  {
    id: "style-hard",
    when: { type: "riding style", style: "hard" },
    moves: [
      { places: suspension, adjuster: "main-pressure", felt: 1 },
      { places: suspension, adjuster: "secondary-pressure", felt: 1 },
    ],
    reason: "A rider who pumps and jumps hard loads the bike more: more main and secondary pressure.",
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
