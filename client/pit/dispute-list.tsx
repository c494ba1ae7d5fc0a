import { A } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { pit } from "#client/text/pit.ts";
import { disputeLines } from "./dispute-lines.ts";
import { EachByKey } from "./each-by-key.tsx";

/** What two people have said differently, each leading to where it is settled; nothing while there is none. */
export function DisputeList(props: { query: string }) {
  const device = useDevice();
  const lines = createMemo(() => disputeLines(device.ledger()));
  return (
    <Show when={lines().length > 0}>
      <section class="card alarm stack" aria-label={pit.disputes.title}>
        <h2>{pit.disputes.title}</h2>
        <p>{pit.disputes.hint}</p>
        <ul class="plain stack">
          <EachByKey each={lines()} keyOf={({ id }) => id}>
            {(line) => (
              <li>
                <Show when={line().path} fallback={<span>{line().sentence}</span>}>
                  {(path) => (
                    <A href={`${path()}${props.query}`} class="button pit-wide">
                      <Show when={line().rider}>{(rider) => <strong>{rider()}</strong>}</Show>
                      <span>{line().sentence}</span>
                    </A>
                  )}
                </Show>
              </li>
            )}
          </EachByKey>
        </ul>
      </section>
    </Show>
  );
}
