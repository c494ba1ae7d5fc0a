import { A } from "@solidjs/router";
import { Show } from "solid-js";
import { BikesLink } from "#client/pit/bikes/bikes-link.tsx";
import { conditionsLine } from "#client/pit/conditions-line.ts";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { SessionFold } from "#client/pit/session-fold.tsx";
import { pit } from "#client/text/pit.ts";
import { print } from "#client/text/print.ts";
import { createMedia } from "#client/widgets/create-media.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { RiderDetails } from "./rider-details.tsx";

/**
 * What the bench is worked for: weekend and session, the bike, the rider. On a phone it is folded away, so that the first
 * step is in view without a scroll.
 */
export function RiderAbout(props: { bench: RiderBench; mounted: RiderBike }) {
  const { chosen } = props.bench;
  const isWide = createMedia("(min-width: 600px)");
  return (
    <details class="pit-about" open={isWide()}>
      <summary class="pit-summary">{pit.aboutRider}</summary>
      <div class="stack">
        <SessionFold chosen={chosen} />
        <BikesLink bench={props.bench} mounted={props.mounted} />
        <RiderDetails bench={props.bench} riderId={props.mounted.riderId} rider={props.mounted.rider} />
        <Show when={conditionsLine(chosen.programme(), chosen.session())}>{(line) => <p>{line()}</p>}</Show>
        <div class="row">
          <A href={`/print/rider/${props.mounted.riderId}${chosen.query()}`} class="button">
            {print.links.sheet}
          </A>
        </div>
      </div>
    </details>
  );
}
