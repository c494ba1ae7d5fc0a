import { createMemo, Show } from "solid-js";
import { whoHas } from "#client/text/who-has.ts";
import { whoHasSetup } from "#core/planning/who-has.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { whoHasLines } from "./who-has-lines.ts";

/** Answers "who has not got the final setup yet?" before the rider goes out. */
export function WhoHas(props: { bench: RiderBench; riderId: string }) {
  const lines = createMemo(() => {
    const { device } = props.bench;
    return whoHasLines(whoHasSetup(device.ledger(), props.riderId, (id) => device.holdingOf(id).devices));
  });
  return (
    <Show when={lines()}>
      {(said) => (
        <section class="card stack" aria-labelledby="who-has">
          <h3 id="who-has">{whoHas.title}</h3>
          <Show when={said().notYet}>
            {(sentence) => (
              <p>
                <strong>{sentence()}</strong>
              </p>
            )}
          </Show>
          <Show when={said().all}>{(sentence) => <p>{sentence()}</p>}</Show>
          <p class="small">{whoHas.hint}</p>
        </section>
      )}
    </Show>
  );
}
