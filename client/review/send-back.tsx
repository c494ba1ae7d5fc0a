import { createMemo, createSignal, createUniqueId } from "solid-js";
import { sentBack } from "#client/text/sent-back.ts";
import { SendBackNotes } from "#client/widgets/send-back-notes.tsx";
import type { Ledger } from "#core/ledger/ledger.ts";
import { standingSendBacks } from "#core/planning/sent-back.ts";
import type { Approval } from "./create-approval.ts";
import type { RiderReview } from "./create-rider-review.ts";

/** The other answer to a proposal: not yet, and why. What was sent back already stands beside it. */
export function SendBack(props: { ledger: Ledger; rider: RiderReview; approval: Approval }) {
  const [note, setNote] = createSignal("");
  const field = createUniqueId();
  const sendBacks = createMemo(() => {
    const mounted = props.rider.mounted();
    const all = mounted ? standingSendBacks(props.ledger, mounted) : [];
    return all.filter(({ type }) => type === props.rider.type());
  });
  const send = (event: SubmitEvent): void => {
    event.preventDefault();
    const mounted = props.rider.mounted();
    const weekendId = props.rider.plan()?.weekendId;
    if (!mounted || weekendId === undefined) return;
    if (props.approval.sendBack(mounted, props.rider.type(), weekendId, note())) setNote("");
  };
  return (
    <>
      <SendBackNotes ledger={props.ledger} sendBacks={sendBacks()} />
      <details>
        <summary>{sentBack.open}</summary>
        <form class="stack" onSubmit={send}>
          <label class="field" for={field}>
            {sentBack.note}
          </label>
          <textarea id={field} maxlength={500} value={note()} onInput={(event) => setNote(event.currentTarget.value)} />
          <button type="submit">{sentBack.send}</button>
        </form>
      </details>
    </>
  );
}
