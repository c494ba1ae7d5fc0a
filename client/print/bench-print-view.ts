/** The bench sequence as it is printed: step by step, with the readings to expect and what to mind. */
import { print } from "#client/text/print.ts";
import { trade } from "#client/text/trade.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { type BenchCaution, type BenchSequence, type BenchStep, benchCautions } from "#core/advice/bench-sequence.ts";
import { markedMaximum } from "#core/advice/marked-maximum.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";

export interface PrintedStep {
  readonly number: number;
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** The reading when the pump goes on, and below which air was lost; empty for what has no pump. */
  readonly first: string;
  /** The reading when the pump goes on once more. */
  readonly again: string;
  readonly most: string;
}

export interface PrintedBench {
  readonly steps: readonly PrintedStep[];
  /** One sentence for each thing to mind, with the steps that it is about. */
  readonly cautions: readonly string[];
  readonly blocked: readonly string[];
}

/** The sequence of one bike as it is printed. */
export function benchPrintView(mounted: RiderBike, { steps, blocked }: BenchSequence): PrintedBench {
  return {
    steps: steps.map((step, index) => printedStep(mounted, step, index + 1)),
    cautions: benchCautions.flatMap((caution) => stepsWith(steps, caution)),
    blocked: blocked.map(trade.limit),
  };
}

function printedStep(mounted: RiderBike, step: BenchStep, number: number): PrintedStep {
  const found = mountedAdjuster(mounted.parts, step.path);
  const most = found && markedMaximum(found);
  let first = "";
  let again = "";
  for (const operation of step.operations) {
    if (operation.do === "check again") again = formatQuantity(operation.expect);
    if (operation.do !== "connect the pump" || !operation.expect) continue;
    const leak = operation.leakBelow ? `; ${print.leakBelow(formatQuantity(operation.leakBelow))}` : "";
    first = `${formatQuantity(operation.expect)}${leak}`;
  }
  return {
    number,
    name: adjusterLabel(step.path),
    from: step.from ? formatQuantity(step.from) : print.notKnown,
    to: formatQuantity(step.to),
    first,
    again,
    most: most ? formatQuantity(most) : "",
  };
}

function stepsWith(steps: readonly BenchStep[], caution: BenchCaution): readonly string[] {
  const numbers = steps.flatMap((step, index) => (step.cautions.includes(caution) ? [index + 1] : []));
  if (numbers.length === 0) return [];
  return [print.bench.steps(numbers.join(", "), numbers.length, print.bench.stepCautions[caution])];
}
