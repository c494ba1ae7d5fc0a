/** What an adjuster is called on a screen. */
import { common } from "#client/text/common.ts";
import { type AdjusterPath, parseAdjusterPath } from "#core/team/adjuster.ts";

/** "Fork, main pressure"; "Front tyre, pressure". */
export function adjusterLabel(path: AdjusterPath): string {
  const address = parseAdjusterPath(path);
  return address ? common.adjusterAt(common.places[address.place], common.adjusters[address.kind]) : path;
}
