import { A, useParams } from "@solidjs/router";
import { Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { createChosenSession } from "#client/pit/chosen-session.ts";
import { createRiderBench } from "#client/pit/create-rider-bench.ts";
import { PitGate } from "#client/pit/pit-gate.tsx";
import { SessionFold } from "#client/pit/session-fold.tsx";
import { UndoStrip } from "#client/pit/undo-strip.tsx";
import { spareBike as words } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { BikeCards } from "./bike-cards.tsx";
import { CopySection } from "./copy-section.tsx";
import { createBikes } from "./create-bikes.ts";
import { MoveSection } from "./move-section.tsx";

/** The bikes of one rider: which is ridden, one's setup on another, and parts that go from one to another. */
export function BikesPage() {
  const device = useDevice();
  const params = useParams<{ riderId: string }>();
  const riderId = () => params.riderId ?? "";
  const chosen = createChosenSession(device);
  const bench = createRiderBench(device, chosen, riderId);
  const bikes = createBikes(bench, riderId);
  return (
    <PitGate>
      <Show
        when={bench.mounted()}
        fallback={<p>{trade.sheetProblem({ type: "unknown rider", riderId: riderId() })}</p>}
      >
        {(mounted) => (
          <div class="stack">
            <div class="pit-rider-head">
              <A href={`/pit/rider/${riderId()}${chosen.query()}`} class="button">
                {words.backToBench}
              </A>
              <h1>{words.title(mounted().rider.name)}</h1>
            </div>
            <SessionFold chosen={chosen} />
            <UndoStrip bench={bench} />
            <BikeCards bikes={bikes} />
            <CopySection bench={bench} />
            <MoveSection bench={bench} riderId={riderId()} />
          </div>
        )}
      </Show>
    </PitGate>
  );
}
