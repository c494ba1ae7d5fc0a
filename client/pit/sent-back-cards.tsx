import { createMemo } from "solid-js";
import { SendBackNotes } from "#client/widgets/send-back-notes.tsx";
import { standingSendBacks } from "#core/planning/sent-back.ts";
import type { RiderBench } from "./create-rider-bench.ts";

/** What the manager sent back of this rider's setups; nothing while there is none. */
export function SentBackCards(props: { bench: Pick<RiderBench, "device" | "mounted"> }) {
  const sendBacks = createMemo(() => {
    const mounted = props.bench.mounted();
    return mounted ? standingSendBacks(props.bench.device.ledger(), mounted) : [];
  });
  return <SendBackNotes ledger={props.bench.device.ledger()} sendBacks={sendBacks()} />;
}
