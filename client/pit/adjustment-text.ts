/** An adjustment in words. */
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatDifference, formatQuantity } from "#client/widgets/format.ts";
import type { Adjustment, ProposedSetting } from "#core/advice/adjustment.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";

/** "Fork main pressure: 62 psi → 66 psi". */
export function settingLine({ path, from, to }: ProposedSetting): string {
  return pit.feedback.changed(trade.adjuster(path), formatQuantity(from), formatQuantity(to));
}

/** How much it changes by, free of the dust of floating point. */
export function adjustmentSize({ from, to }: ProposedSetting): TypedQuantity {
  return { value: Number((to.value - from.value).toFixed(3)), unit: to.unit };
}

/** The size with its sign: "+4 psi"; of a damper also which way that is: "+1 click, more open". */
export function adjustmentSizeText(setting: ProposedSetting): string {
  const size = adjustmentSize(setting);
  const text = formatDifference(size);
  return size.unit === "clicks" ? `${text}, ${size.value > 0 ? pit.advice.opens : pit.advice.closes}` : text;
}

/** What called for it: "Front: sag above target". */
export function causeLine({ end, symptoms }: Pick<Adjustment, "end" | "symptoms">): string {
  return pit.advice.cause(pit.feedback.ends[end], symptoms.map((symptom) => trade.symptoms[symptom]).join(", "));
}
