/** The hand operations of a step at the bench, in words. */
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import type { BenchOperation } from "#core/advice/bench-operations.ts";
import { valueText } from "./names.ts";

const { bench } = pit;

/** One sentence for one operation. */
export function operationText(operation: BenchOperation): string {
  switch (operation.do) {
    case "connect the pump": {
      const { expect, leakBelow } = operation;
      const words = bench.operations["connect the pump"];
      return expect && leakBelow ? `${words} ${bench.firstReading(valueText(expect), valueText(leakBelow))}` : words;
    }
    case "set the pressure":
      return bench.setTo(trade.adjuster(operation.path), valueText(operation.to));
    case "check again":
      return bench.checkAgain(valueText(operation.expect));
    case "change the spacers":
      return bench.spacersTo(valueText(operation.to));
    case "fit the spring":
      return bench.springTo(valueText(operation.to));
    case "turn the collar":
      return bench.collarTo(valueText(operation.to));
    case "count the clicks":
      return bench.clicksTo(valueText(operation.to));
    default:
      return bench.operations[operation.do];
  }
}
