import { A } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { spareBike as words } from "#client/text/spare-bike.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { bikesOf, placeDisputes } from "./bike-lines.ts";

/** Which bike this bench is about, and the way to all of the rider's bikes; what is in dispute there is said here. */
export function BikesLink(props: { bench: Pick<RiderBench, "device" | "chosen">; mounted: RiderBike }) {
  const bikes = createMemo(() => bikesOf(props.bench.device.ledger(), props.mounted.riderId));
  const disputes = createMemo(() => placeDisputes(props.bench.device.ledger(), bikes()));
  return (
    <div class="row">
      <A href={`/pit/rider/${props.mounted.riderId}/bikes${props.bench.chosen.query()}`} class="button">
        {words.link(props.mounted.bike.name, bikes().length)}
      </A>
      <Show when={disputes()[0]}>
        {(dispute) => <p class="problem">{words.disputes.title(dispute().place, dispute().mounted.bike.name)}</p>}
      </Show>
    </div>
  );
}
