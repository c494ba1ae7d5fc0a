/** What advice on a run is asked with: the builder's bike after a run on which these things were said of its ends. */
import type { AdviceInput } from "#core/advice/adjustment.ts";
import type { EndFeedback } from "#core/weekend/run.ts";
import { riderBike, setupValues } from "./bike.ts";

const course = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;

export function adviceInput(
  front: EndFeedback,
  changes: Partial<AdviceInput> = {},
  rear: EndFeedback = {},
): AdviceInput {
  const values = changes.onTheBike ?? setupValues;
  return {
    mounted: riderBike(),
    run: { bike: "alder-1", weekend: "w", session: "s", front, rear },
    course,
    onTheBike: values,
    riding: values,
    ridingAtRun: values,
    baseline: setupValues,
    baselineSag: {},
    measuredBefore: { front: [], rear: [] },
    earlier: [],
    ...changes,
  };
}
