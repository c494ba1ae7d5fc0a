import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { weekend as words } from "#client/text/weekend.ts";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { createWeekendForm, type SavedWeekend } from "./create-weekend-form.ts";
import { LabelledInput } from "./labelled-input.tsx";
import { runsBySession } from "./runs-by-session.ts";
import { SessionFields } from "./session-fields.tsx";
import { VenueFields } from "./venue-fields.tsx";
import { weekendDisputes } from "./weekend-disputes.ts";

/** A weekend with its venue and sessions, all on one page and saved together. */
export function WeekendForm(props: { weekendId?: string; onSaved: (saved: SavedWeekend) => void }) {
  const device = useDevice();
  const form = createWeekendForm(device, props.weekendId);
  const weekendId = () => props.weekendId ?? "";
  const disputes = createMemo(() => weekendDisputes(device.ledger(), weekendId()));
  const runs = createMemo(() => runsBySession(device.ledger(), weekendId()));
  const rows = createMemo(() => form.draft().sessions.map(({ row }) => row));
  const runsOf = (row: string) => runs().get(row) ?? 0;
  let element: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    const saved = form.save(focusInvalidField(element));
    if (saved) props.onSaved(saved);
  };
  return (
    <form ref={element} class="stack pit-weekend-form" onSubmit={save} novalidate>
      <Show when={disputes().length > 0}>
        <div class="problem">
          <p>{words.disputed}</p>
          <ul>
            <For each={disputes()}>{(sentence) => <li>{sentence}</li>}</For>
          </ul>
        </div>
      </Show>
      <div class="pit-fields">
        <LabelledInput
          label={words.name}
          type="text"
          value={form.draft().name}
          onInput={(name) => form.set({ name })}
        />
        <LabelledInput
          label={words.startsOn}
          type="date"
          value={form.draft().startsOn}
          hint={words.startsOnHint}
          onInput={form.setFirstDay}
        />
        <VenueFields form={form} />
      </div>
      <h2>{words.sessions}</h2>
      <p>{props.weekendId === undefined ? words.newSessionsHint : words.sessionsHint}</p>
      <ul class="plain pit-sessions">
        <For each={rows()}>{(row) => <SessionFields form={form} row={row} runs={runsOf(row)} />}</For>
      </ul>
      <div>
        <button type="button" onClick={form.addSession}>
          {words.add}
        </button>
      </div>
      <div class="pit-sticky-bottom">
        <Problem sentence={form.problem()} />
        <button type="submit" class="main">
          {common.save}
        </button>
      </div>
    </form>
  );
}
