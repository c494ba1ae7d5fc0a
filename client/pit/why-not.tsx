import { createMemo, createSignal, createUniqueId, For, Show } from "solid-js";
import { trade } from "#client/text/trade.ts";
import { whyNot as words } from "#client/text/why-not.ts";
import { Choice } from "#client/widgets/choice.tsx";
import type { AdviceInput } from "#core/advice/adjustment.ts";
import { type ChangeInMind, whyNot } from "#core/advice/why-not.ts";
import { type AdjusterPath, isDamperAdjuster } from "#core/team/adjuster.ts";
import { mountedAdjuster, mountedAdjusters } from "#core/team/roster.ts";
import { whyNotLines } from "./why-not-lines.ts";

/** Rules in view at once; the others are further from speaking. */
const SHOWN = 3;

const directions = ["up", "down"] as const;

/** A change that the mechanic has in mind, and why the advice does not propose it. */
export function WhyNot(props: { input: AdviceInput }) {
  const [path, setPath] = createSignal<AdjusterPath>();
  const [direction, setDirection] = createSignal<ChangeInMind["direction"]>();
  const chooser = createUniqueId();
  const paths = () => mountedAdjusters(props.input.mounted.parts).map((found) => found.path);
  const ways = () => {
    const at = path();
    const found = at && mountedAdjuster(props.input.mounted.parts, at);
    return found && isDamperAdjuster(found.adjuster.kind) ? words.directions.damper : words.directions.other;
  };
  const lines = createMemo(() => {
    const at = path();
    const way = direction();
    return at && way && whyNotLines(whyNot(props.input, { path: at, direction: way }));
  });
  return (
    <details class="card">
      <summary class="pit-summary">{words.title}</summary>
      <div class="stack">
        <p>{words.hint}</p>
        <div>
          <label class="field" for={chooser}>
            {words.adjuster}
          </label>
          <select
            id={chooser}
            onChange={(event) => setPath(paths().find((each) => each === event.currentTarget.value))}
          >
            <option value="">{words.choose}</option>
            <For each={paths()}>
              {(each) => (
                <option value={each} selected={each === path()}>
                  {trade.adjuster(each)}
                </option>
              )}
            </For>
          </select>
        </div>
        <Choice
          legend={words.direction}
          options={directions}
          labelOf={(way) => ways()[way]}
          value={direction()}
          onChange={setDirection}
          required
        />
        <div aria-live="polite">
          <Show when={lines()}>
            {(found) => (
              <>
                <Show when={found().answer}>{(answer) => <p>{answer()}</p>}</Show>
                <RuleLines rules={found().rules.slice(0, SHOWN)} />
                <Show when={found().rules.length > SHOWN}>
                  <details>
                    <summary>{words.more(found().rules.length - SHOWN)}</summary>
                    <RuleLines rules={found().rules.slice(SHOWN)} />
                  </details>
                </Show>
              </>
            )}
          </Show>
        </div>
      </div>
    </details>
  );
}

function RuleLines(props: { rules: ReturnType<typeof whyNotLines>["rules"] }) {
  return (
    <ul>
      <For each={props.rules}>
        {({ rule, obstacle }) => (
          <li>
            {rule} <strong>{obstacle}</strong>
          </li>
        )}
      </For>
    </ul>
  );
}
