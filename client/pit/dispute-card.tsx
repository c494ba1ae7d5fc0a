import { createMemo, createSignal, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { createDispute } from "./create-dispute.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { ReadingForm } from "./reading-form.tsx";

/** One adjuster of which two people say different things, until somebody has looked. */
export function DisputeCard(props: { bench: RiderBench; path: AdjusterPath }) {
  const dispute = createMemo(() => createDispute(props.bench, props.path));
  const [other, setOther] = createSignal(false);
  return (
    <section class="card alarm stack" aria-label={`${pit.disputes.title}: ${trade.adjuster(props.path)}`}>
      <h2>
        {pit.disputes.title}: {trade.adjuster(props.path)}
      </h2>
      <p>{pit.disputes.look}</p>
      <ul class="plain stack">
        <EachByKey each={dispute().claims()} keyOf={({ id }) => id}>
          {(claim) => (
            <li class="pit-claim">
              <span class="value">{claim().value}</span>
              <span>
                <strong>{pit.disputes.says(claim().who)}</strong>, {claim().when}. {claim().why}{" "}
                <span class="small">({pit.disputes.device(claim().device)})</span>
              </span>
              <Show when={claim().setting}>
                {(setting) => (
                  <button type="button" class="main" onClick={() => dispute().settle(setting())}>
                    {pit.disputes.itIs(claim().value)}
                  </button>
                )}
              </Show>
            </li>
          )}
        </EachByKey>
      </ul>
      <Show
        when={other()}
        fallback={
          <button type="button" onClick={() => setOther(true)}>
            {pit.disputes.somethingElse}
          </button>
        }
      >
        <ReadingForm
          found={dispute().found()}
          label={pit.disputes.value}
          onSave={(reading) => dispute().settleReading(reading)}
        />
        <button type="button" onClick={() => setOther(false)}>
          {common.cancel}
        </button>
      </Show>
    </section>
  );
}
