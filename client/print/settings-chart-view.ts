/** The settings that were changed over a weekend, a strip an adjuster, as a chart and in words. */
import { weekendReport } from "#client/text/weekend-report.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { SettingSeries } from "#core/planning/setting-series.ts";
import { chart, rounded, runX } from "./run-axis.ts";

const words = weekendReport.settings;

/** Height of a strip, and the edges of its steps in it. */
const strip = { height: 34, top: 14, bottom: 26 } as const;

export interface SettingStrip {
  readonly name: string;
  /** Where its name and values stand. */
  readonly middle: number;
  /** Steps as SVG paths have them: level through a run, up or down between two. */
  readonly path: string;
  /** A value where it is first known and where it changes. */
  readonly labels: readonly { readonly x: number; readonly y: number; readonly text: string }[];
}

export interface SettingsChartView {
  readonly height: number;
  readonly strips: readonly SettingStrip[];
  readonly described: readonly string[];
}

/** The chart, or undefined where no setting stood differently in two runs. */
export function settingsChartView(settings: readonly SettingSeries[]): SettingsChartView | undefined {
  if (settings.length === 0) return undefined;
  return {
    height: settings.length * strip.height + 6,
    strips: settings.map(settingStrip),
    described: settings.map(inWords),
  };
}

function settingStrip({ path, unit, values }: SettingSeries, index: number): SettingStrip {
  const known = values.filter((value) => value !== undefined);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const offset = index * strip.height;
  const y = (value: number): number =>
    rounded(offset + strip.bottom - ((value - least) / (most - least)) * (strip.bottom - strip.top));
  const half = (chart.right - chart.left) / values.length / 2;
  let drawn = "";
  let previous: number | undefined;
  const labels: { x: number; y: number; text: string }[] = [];
  for (const [position, value] of values.entries()) {
    if (value !== undefined) {
      const x = runX(position + 1, values.length);
      // A run whose setup is not known leaves a gap.
      drawn += `${previous === undefined ? "M" : "L"}${rounded(x - half)} ${y(value)}L${rounded(x + half)} ${y(value)}`;
      if (value !== previous)
        labels.push({ x: rounded(x - half + 2), y: y(value) - 3, text: formatQuantity({ value, unit }) });
    }
    previous = value;
  }
  return { name: adjusterLabel(path), middle: offset + strip.height / 2 + 6, path: drawn, labels };
}

/** "Fork, rebound: 8 clicks from run 1, 9 clicks from run 3." */
function inWords({ path, unit, values }: SettingSeries): string {
  const changes = values.flatMap((value, index) => {
    if (index > 0 && value === values[index - 1]) return [];
    return [words.atRun(value === undefined ? words.unknown : formatQuantity({ value, unit }), index + 1)];
  });
  return words.described(adjusterLabel(path), changes.join(", "));
}
