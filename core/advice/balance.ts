/**
 * How the two ends stand to each other against the rider's own baseline:
 * natural frequencies at sag, front over rear (core/physics/balance.ts).
 */
import { balanceShift } from "#core/physics/balance.ts";
import { roundToStep } from "#core/quantity/rounding.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { End } from "#core/team/place.ts";
import type { MountedAdjuster } from "#core/team/roster.ts";
import { predict } from "./prediction.ts";
import type { SuspensionModel } from "./suspension-model.ts";

export type EndModels = Readonly<Partial<Record<End, SuspensionModel>>>;

/**
 * How much firmer (above 0) or softer each end has become against the other; undefined when one end has no natural
 * frequency (no spring, or it tops or bottoms out at rest), now or at the baseline.
 */
export function balanceShifts(
  models: EndModels,
  now: SetupValues,
  baseline: SetupValues,
): Readonly<Record<End, number>> | undefined {
  const ratio = (values: SetupValues): number | undefined => {
    const front = models.front && predict(models.front, values)?.frequency;
    const rear = models.rear && predict(models.rear, values)?.frequency;
    return front && rear && front / rear;
  };
  const ratioNow = ratio(now);
  const own = ratio(baseline);
  if (ratioNow === undefined || own === undefined) return undefined;
  return {
    front: balanceShift({ now: ratioNow, own }),
    rear: balanceShift({ now: 1 / ratioNow, own: 1 / own }),
  };
}

/**
 * The value of an adjuster at which its end's natural frequency has changed by the factor `1 / (1 + shift)`: then the
 * balance is that of the baseline. Looked for on the adjuster's own steps, up to two large steps from `current`;
 * undefined when none of them does it.
 */
export function valueForBalance(
  model: SuspensionModel,
  found: MountedAdjuster,
  values: SetupValues,
  current: number,
  shift: number,
): number | undefined {
  const { step, large, unit, minimum, maximum } = found.adjuster;
  const frequencyAt = (value: number) => predict(model, { ...values, [found.path]: { value, unit } })?.frequency;
  const before = frequencyAt(current);
  if (before === undefined) return undefined;
  const target = before / (1 + shift);
  const sign = shift > 0 ? -1 : 1;
  for (let change = step; change <= 2 * large; change += step) {
    const value = roundToStep(current + sign * change, step);
    const frequency = frequencyAt(value);
    if (value < minimum || value > maximum || frequency === undefined) return undefined;
    if (sign > 0 ? frequency >= target : frequency <= target) return value;
  }
  return undefined;
}
