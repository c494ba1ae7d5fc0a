import { A } from "@solidjs/router";
import { type Accessor, type JSX, Match, Switch } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { trackside } from "#client/text/trackside.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { createRiderAtHand, type RiderAtHand } from "./create-rider-at-hand.ts";

/** Shows a screen to a rider whose bike is known, and says what is missing otherwise. */
export function RiderGate(props: { children: (at: RiderAtHand, mounted: Accessor<RiderBike>) => JSX.Element }) {
  const device = useDevice();
  const at = createRiderAtHand();
  const rider = () => device.member()?.rider;
  return (
    <Switch fallback={<p>{trackside.noBike}</p>}>
      <Match when={!device.loaded()}>
        <p>{common.loading}</p>
      </Match>
      <Match when={rider() === undefined}>
        <div class="stack">
          <p>{trackside.notARider}</p>
          <A class="button" href="/">
            {common.whoAreYou.title}
          </A>
        </div>
      </Match>
      <Match when={at.mounted()}>{(mounted) => props.children(at, mounted)}</Match>
    </Switch>
  );
}
