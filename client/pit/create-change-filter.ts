/** Which lines of a rider's changelog are in view: those of one adjuster, of one weekend, or all. */
import { type Accessor, createMemo, createSignal } from "solid-js";
import { type AdjusterPath, adjusterPaths } from "#core/team/adjuster.ts";
import type { ChangeLine } from "./change-lines.ts";

export interface ChangeFilter {
  /** The adjusters and weekends that there are lines of. */
  readonly paths: Accessor<readonly AdjusterPath[]>;
  readonly weekends: Accessor<readonly string[]>;
  readonly path: Accessor<AdjusterPath | undefined>;
  readonly weekend: Accessor<string | undefined>;
  choosePath(path: AdjusterPath | undefined): void;
  chooseWeekend(weekend: string | undefined): void;
  readonly lines: Accessor<readonly ChangeLine[]>;
}

/** Shows all until something is chosen. */
export function createChangeFilter(all: Accessor<readonly ChangeLine[]>): ChangeFilter {
  const [path, choosePath] = createSignal<AdjusterPath>();
  const [weekend, chooseWeekend] = createSignal<string>();
  return {
    paths: createMemo(() => {
      const there = new Set(all().map((line) => line.path));
      return adjusterPaths.filter((candidate) => there.has(candidate));
    }),
    weekends: createMemo(() => [...new Set(all().flatMap((line) => line.weekend ?? []))]),
    path,
    weekend,
    choosePath: (chosen) => void choosePath(chosen),
    chooseWeekend: (chosen) => void chooseWeekend(chosen),
    lines: createMemo(() =>
      all().filter(
        (line) =>
          (path() === undefined || line.path === path()) && (weekend() === undefined || line.weekend === weekend()),
      ),
    ),
  };
}
