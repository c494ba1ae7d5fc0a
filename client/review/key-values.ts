/** The few values by which a team knows a baseline at a glance. */
import { review } from "#client/text/review.ts";
import { formatNumber, formatQuantity } from "#client/widgets/format.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";

export interface KeyValue {
  readonly name: string;
  readonly text: string;
}

/** Springs, tyres and rebound of a baseline; what it does not have is left out. */
export function keyValues(values: SetupValues): readonly KeyValue[] {
  const words = review.keyValues;
  return [
    ...springValue(words.fork, values, "fork"),
    ...springValue(words.shock, values, "shock"),
    ...pair(
      words.tyres,
      values[adjusterPath("front-tyre", "tyre-pressure")],
      values[adjusterPath("rear-tyre", "tyre-pressure")],
    ),
    ...pair(words.rebound, values[adjusterPath("fork", "rebound")], values[adjusterPath("shock", "rebound")]),
  ];
}

function springValue(name: string, values: SetupValues, place: "fork" | "shock"): readonly KeyValue[] {
  const main = values[adjusterPath(place, "main-pressure")];
  const secondary = values[adjusterPath(place, "secondary-pressure")];
  if (main && secondary) return pair(name, main, secondary);
  const spring = main ?? values[adjusterPath(place, "spring-rate")];
  return spring ? [{ name, text: formatQuantity(spring) }] : [];
}

/** "80 / 146 psi"; with both units where they differ. */
function pair(name: string, first: TypedQuantity | undefined, second: TypedQuantity | undefined): readonly KeyValue[] {
  if (!first && !second) return [];
  const none = review.keyValues.none;
  const text =
    first && second && first.unit === second.unit
      ? `${formatNumber(first.value)} / ${formatQuantity(second)}`
      : `${first ? formatQuantity(first) : none} / ${second ? formatQuantity(second) : none}`;
  return [{ name, text }];
}
