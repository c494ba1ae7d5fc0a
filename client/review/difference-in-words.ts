/** A difference as people say it. */
import { review } from "#client/text/review.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";

/** "2 psi more", "1 clicks less"; undefined when there is none, or it is not known. */
export function differenceInWords(difference: TypedQuantity | undefined): string | undefined {
  if (!difference || difference.value === 0) return undefined;
  const size = formatQuantity({ ...difference, value: Math.abs(difference.value) });
  return difference.value > 0 ? review.weekend.more(size) : review.weekend.less(size);
}
