/** The force curve of the part that an adjustment changes, before and after: for the eye. */
import { DEFAULT_RIDING_EXPONENT } from "#core/physics/gas.ts";
import { type ForcePoint, forceCurve } from "#core/physics/spring.ts";
import { convert } from "#core/quantity/unit.ts";
import { parseAdjusterPath } from "#core/team/adjuster.ts";
import { mountedAdjuster } from "#core/team/roster.ts";
import type { Adjustment, AdviceInput } from "./adjustment.ts";
import { modelAtRun } from "./end-view.ts";

/** Strokes in m along the part, forces in N, while riding. */
export interface ForceCurves {
  readonly before: readonly ForcePoint[];
  readonly after: readonly ForcePoint[];
}

/**
 * The curves for an adjustment that came from `input`, at `points` strokes (2 to 10 000). Undefined for what is no
 * spring's setting (a damper, a tyre), and where the values make no spring.
 */
export function forceCurves(
  input: AdviceInput,
  { setting }: Pick<Adjustment, "setting">,
  points: number,
): ForceCurves | undefined {
  const place = parseAdjusterPath(setting.path)?.place;
  const found = mountedAdjuster(input.mounted.parts, setting.path);
  const now = input.riding[setting.path];
  if ((place !== "fork" && place !== "shock") || !found || !now || found.adjuster.unit === "clicks") return undefined;
  const model = modelAtRun(input, place === "fork" ? "front" : "rear");
  const { unit } = found.adjuster;
  const change = convert(setting.to, unit).value - convert(setting.from, unit).value;
  const before = model?.springWith(input.riding, DEFAULT_RIDING_EXPONENT);
  const after = model?.springWith(
    { ...input.riding, [setting.path]: { value: convert(now, unit).value + change, unit } },
    DEFAULT_RIDING_EXPONENT,
  );
  return before && after ? { before: forceCurve(before, points), after: forceCurve(after, points) } : undefined;
}
