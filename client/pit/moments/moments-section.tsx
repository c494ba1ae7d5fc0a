import { For, Show } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { Fold } from "#client/pit/fold.tsx";
import { moments as words } from "#client/text/moments.ts";
import { TableScroll } from "#client/widgets/table-scroll.tsx";
import { BackSteps } from "./back-steps.tsx";
import { createMoments } from "./create-moments.ts";
import type { MomentChoice } from "./moment-choices.ts";

interface MomentsProps {
  readonly bench: Pick<RiderBench, "device" | "mounted" | "chosen" | "settings" | "occasion" | "acts">;
}

/** Two moments of the changelog beside each other, and the way back to the first. */
export function MomentsSection(props: MomentsProps) {
  // A season has thousands of moments to choose from.
  return (
    <Fold summary={words.title} class="pit-moments">
      <ComparedMoments bench={props.bench} />
    </Fold>
  );
}

function ComparedMoments(props: MomentsProps) {
  const moments = createMoments(props.bench);
  return (
    <div class="stack">
      <MomentSelect
        label={words.earlier}
        choices={moments.choices()}
        chosen={moments.earlier()}
        onChoose={moments.chooseEarlier}
      />
      <MomentSelect
        label={words.later}
        choices={moments.choices()}
        chosen={moments.later()}
        onChoose={moments.chooseLater}
      />
      <p aria-live="polite">
        <strong>{moments.rows().length === 0 ? words.same : words.differ(moments.rows().length)}</strong>{" "}
        {moments.isAtTheBench() ? words.atTheBench : words.asTyped}
      </p>
      <Show when={moments.rows().length > 0}>
        <TableScroll label={words.title}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.adjuster}</th>
                <th scope="col">{words.earlier}</th>
                <th scope="col">{words.later}</th>
                <th scope="col">{words.difference}</th>
              </tr>
            </thead>
            <tbody>
              <For each={moments.rows()}>
                {(row) => (
                  <tr>
                    <th scope="row">{row.adjuster}</th>
                    <td>{row.earlier}</td>
                    <td>{row.later}</td>
                    <td>{row.difference}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </TableScroll>
      </Show>
      <h3>{words.backTitle(moments.earlier().label)}</h3>
      <Show when={moments.plan()} fallback={<p>{words.needsConditions}</p>}>
        {(plan) => <BackSteps plan={plan()} onDone={moments.goBack} />}
      </Show>
    </div>
  );
}

function MomentSelect(props: {
  label: string;
  choices: readonly MomentChoice[];
  chosen: MomentChoice;
  onChoose: (id: string) => void;
}) {
  return (
    <label class="select-field">
      <span>{props.label}</span>
      <select onChange={(event) => props.onChoose(event.currentTarget.value)}>
        <For each={props.choices}>
          {({ id, label }) => (
            <option value={id} selected={id === props.chosen.id}>
              {label}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
