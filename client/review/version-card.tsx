import { For, Match, Show, Switch } from "solid-js";
import { review } from "#client/text/review.ts";
import type { Baseline } from "#core/team/baseline.ts";
import type { VersionView } from "./versions-view.ts";

export interface VersionCardProps {
  readonly version: VersionView;
  readonly onKeep: (value: Baseline) => void;
  readonly onGoBack: (value: Baseline) => void;
}

/** One version of a baseline, what differs from the one before it marked in words. */
export function VersionCard(props: VersionCardProps) {
  const value = () => props.version.record.value;
  return (
    <article class="card version" data-standing={props.version.standing}>
      <header>
        <h3>
          {review.versions.version(props.version.number)}{" "}
          <Switch>
            <Match when={props.version.standing === "current"}>
              <span class="tag strong">{review.versions.current}</span>
            </Match>
            <Match when={props.version.standing === "in dispute"}>
              <span class="tag">{review.versions.disputed}</span>
            </Match>
          </Switch>
        </h3>
        <For each={props.version.facts}>{(fact) => <p class="fact">{fact}</p>}</For>
      </header>
      <p class="against small">{props.version.against}</p>
      <dl class="version-values">
        <For each={props.version.values}>
          {(row) => (
            <div data-changed={row.changed !== undefined}>
              <dt>{row.label}</dt>
              <dd>
                <strong>{row.value}</strong>
                <Show when={row.changed}>{(changed) => <span class="change"> {changed()}</span>}</Show>
              </dd>
            </div>
          )}
        </For>
      </dl>
      <div class="version-action">
        <Show when={value()}>
          {(baseline) => (
            <Switch>
              <Match when={props.version.standing === "in dispute"}>
                <button type="button" class="main" onClick={() => props.onKeep(baseline())}>
                  {review.versions.keep}
                </button>
              </Match>
              <Match when={props.version.standing === "old"}>
                <button type="button" onClick={() => props.onGoBack(baseline())}>
                  {review.versions.back(props.version.number)}
                </button>
              </Match>
            </Switch>
          )}
        </Show>
      </div>
    </article>
  );
}
