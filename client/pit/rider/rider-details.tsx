import { createMemo, createSignal, Show } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { riderDetails as words } from "#client/text/rider-details.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { Rider } from "#core/team/people.ts";
import { shareText } from "./create-rider-details.ts";
import { RiderForm } from "./rider-form.tsx";

/** What is known of the rider in one line; opened, it can be changed. */
export function RiderDetails(props: { bench: RiderBench; riderId: string; rider: Rider }) {
  const [open, setOpen] = createSignal(false);
  // The form starts afresh with each opening, and for each rider.
  const edited = createMemo(() => (open() ? props.riderId : undefined));
  let summary: HTMLElement | undefined;
  const close = (): void => {
    setOpen(false);
    summary?.focus();
  };
  return (
    <details class="pit-rider-details" open={open()} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary ref={summary} class="pit-summary">
        {words.summary(formatQuantity(props.rider.mass), shareText(props.rider.frontShare))}
      </summary>
      <Show when={edited()} keyed>
        {(riderId) => <RiderForm bench={props.bench} riderId={riderId} onSaved={close} />}
      </Show>
    </details>
  );
}
