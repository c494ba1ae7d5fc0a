/** What differs between two bikes, a sentence each. */
import { spareBike } from "#client/text/spare-bike.ts";
import { formatNumber, formatQuantity } from "#client/widgets/format.ts";
import type { AdjusterDifference } from "#core/planning/copy-setup.ts";
import type { PartDifference } from "#core/planning/part-differences.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { RiderBike } from "#core/team/roster.ts";

/** A sentence for each difference of parts, bikes and riders. */
export function differenceLines(
  differences: readonly PartDifference[],
  from: RiderBike,
  to: RiderBike,
): readonly string[] {
  return differences.map((difference) => lineOf(difference, from, to));
}

/** A sentence for each difference of one adjuster. */
export function adjusterLines(differences: readonly AdjusterDifference[]): readonly string[] {
  return differences.map(adjusterLine);
}

function adjusterLine(difference: AdjusterDifference): string {
  const words = spareBike.copy;
  switch (difference.type) {
    case "range":
      return words.range(spanText(difference.from), spanText(difference.to));
    case "step":
      return words.step(formatQuantity(difference.from), formatQuantity(difference.to));
    case "per click":
      return words.perClick(percentText(difference.from), percentText(difference.to));
  }
}

function lineOf(difference: PartDifference, from: RiderBike, to: RiderBike): string {
  const words = spareBike.differences;
  switch (difference.type) {
    case "no part":
      return words.noPart(difference.place, (difference.missingOn === "from" ? from : to).bike.name);
    case "name":
      return words.names(difference.place, difference.from, difference.to);
    case "archetype":
      return words.archetypes(difference.place, words.archetype[difference.from], words.archetype[difference.to]);
    case "dimension": {
      const { place, dimension } = difference;
      const what = words.dimensions[dimension];
      const named = place === undefined ? what : words.ofPlace(place, what);
      return words.dimension(named, quantityText(difference.from), quantityText(difference.to));
    }
    case "leverage":
      return words.leverage(formatNumber(difference.from), formatNumber(difference.to));
  }
}

function quantityText(quantity: TypedQuantity | undefined): string {
  return quantity ? formatQuantity(quantity) : spareBike.differences.unknown;
}

function spanText([low, high]: readonly [TypedQuantity, TypedQuantity]): string {
  return spareBike.copy.span(formatQuantity(low), formatQuantity(high));
}

function percentText(perClick: number | undefined): string {
  return perClick === undefined ? spareBike.copy.notMeasured : spareBike.copy.percent(formatNumber(perClick * 100));
}
