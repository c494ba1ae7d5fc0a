import { createMemo, For, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import type { SetupSheet } from "#core/planning/setup-sheet.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { places } from "#core/team/place.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { SetupRowView } from "./setup-row-view.tsx";

/** The setup sheet, part by part. */
export function SetupSheetView(props: {
  bench: RiderBench;
  sheet: SetupSheet;
  onSetByHand: (path: AdjusterPath) => void;
}) {
  const missing = () => props.sheet.setup.basis.missing.map(({ type }) => common.courseTypes[type]).join(", ");
  return (
    <section class="stack">
      <h2>{pit.sheet.title}</h2>
      <Show when={props.sheet.setup.basis.shares.length === 0}>
        <p>{pit.sheet.noBaseline}</p>
      </Show>
      <Show when={props.sheet.setup.basis.shares.length > 0 && missing() !== ""}>
        <p>{pit.sheet.missingTypes(missing())}</p>
      </Show>
      <Show when={!props.sheet.setup.fitted}>
        <p>{pit.sheet.notFitted}</p>
      </Show>
      <For each={places}>
        {(place) => {
          const paths = createMemo(
            () => props.sheet.rows.filter(({ found }) => found.place === place).map(({ path }) => path),
            undefined,
            { equals: (a, b) => a.join() === b.join() },
          );
          return (
            <Show when={paths().length > 0}>
              <section class="pit-part">
                <h3 class="pit-part-title">{common.places[place]}</h3>
                <ul class="plain pit-rows">
                  <For each={paths()}>
                    {(path) => (
                      <SetupRowView
                        bench={props.bench}
                        sheet={props.sheet}
                        path={path}
                        onSetByHand={() => props.onSetByHand(path)}
                      />
                    )}
                  </For>
                </ul>
              </section>
            </Show>
          );
        }}
      </For>
    </section>
  );
}
