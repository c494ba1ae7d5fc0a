import { createMemo, Show } from "solid-js";
import { weekend as words } from "#client/text/weekend.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { sessionPurposes } from "#core/weekend/race-weekend.ts";
import type { WeekendFormState } from "./create-weekend-form.ts";
import { LabelledInput } from "./labelled-input.tsx";
import { startInWords } from "./start-in-words.ts";
import { sessionTitle } from "./weekend-problem.ts";

/** One session of the weekend: to be changed, or marked as removed. */
export function SessionFields(props: { form: WeekendFormState; row: string; runs: number }) {
  const session = createMemo(() => props.form.draft().sessions.find(({ row }) => row === props.row));
  const title = createMemo(() => {
    const known = session();
    return known ? sessionTitle(props.form.draft(), known) : "";
  });
  // Native fields show days in the order of the device's language; said once more in words, nobody takes May for March.
  const moment = createMemo(() => {
    const known = session();
    return known && startInWords(known);
  });
  const isRemoved = createMemo(() => session()?.removal !== undefined);
  return (
    <li class="card stack pit-session">
      <h3>{title()}</h3>
      <Show
        when={isRemoved()}
        fallback={
          <>
            <div class="pit-session-fields">
              <LabelledInput
                label={words.sessionName}
                fullLabel={`${title()}: ${words.sessionName}`}
                type="text"
                value={session()?.name ?? ""}
                onInput={(name) => props.form.setSession(props.row, { name })}
              />
              <LabelledInput
                label={words.day}
                fullLabel={`${title()}: ${words.day}`}
                type="date"
                value={session()?.day ?? ""}
                onInput={(day) => props.form.setSession(props.row, { day })}
              />
              <LabelledInput
                label={words.time}
                fullLabel={`${title()}: ${words.time}`}
                type="time"
                value={session()?.time ?? ""}
                onInput={(time) => props.form.setSession(props.row, { time })}
              />
            </div>
            <Show when={moment()}>{(text) => <p>{text()}</p>}</Show>
            <Choice
              legend={words.purpose}
              options={sessionPurposes}
              labelOf={(purpose) => words.purposes[purpose]}
              value={session()?.purpose}
              required
              onChange={(purpose) => props.form.setSession(props.row, { purpose })}
            />
            <div>
              <button type="button" onClick={() => props.form.removeSession(props.row)}>
                {words.remove(title())}
              </button>
            </div>
          </>
        }
      >
        <p>
          <strong>{words.removed(title())}</strong> <Show when={props.runs > 0}>{words.runsStay(props.runs)}</Show>
        </p>
        <LabelledInput
          label={words.reason}
          fullLabel={`${title()}: ${words.reason}`}
          type="text"
          value={session()?.removal ?? ""}
          onInput={(removal) => props.form.setSession(props.row, { removal })}
        />
        <div>
          <button type="button" onClick={() => props.form.keepSession(props.row)}>
            {words.keep(title())}
          </button>
        </div>
      </Show>
    </li>
  );
}
