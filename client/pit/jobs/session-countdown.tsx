import { For, Show } from "solid-js";
import { jobQueue as words } from "#client/text/job-queue.ts";
import type { CountdownLine } from "./countdown-lines.ts";

/** How long it is to each session of the day. It is read when somebody looks, and not spoken at every minute. */
export function SessionCountdown(props: { lines: readonly CountdownLine[] }) {
  return (
    <section aria-label={words.sessions.title}>
      <Show when={props.lines.length > 0} fallback={<p>{words.sessions.allOver}</p>}>
        <ul class="plain pit-countdown">
          <For each={props.lines}>
            {(line) => (
              <li>
                <strong>{line.name}</strong> <time datetime={line.startsAt}>{line.start}</time>
                <span class="pit-countdown-state">
                  <Show when={line.left} fallback={line.state}>
                    {(left) => <time datetime={left().machine}>{line.state}</time>}
                  </Show>
                </span>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
