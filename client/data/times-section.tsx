import { For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { data } from "#client/text/data.ts";
import { FileField } from "#client/widgets/file-field.tsx";
import { WeekendChoice } from "#client/widgets/weekend-choice.tsx";
import { timingColumns } from "#core/exchange/timing/column-mapping.ts";
import { weekends } from "#core/weekend/programme.ts";
import { createTimes } from "./create-times.ts";
import { ImportSteps } from "./import-steps.tsx";
import { pause } from "./pause.ts";

/** Run times from a timing system's file. */
export function TimesSection() {
  const device = useDevice();
  const times = createTimes(device, pause);
  return (
    <section class="card stack">
      <h2>{data.times.title}</h2>
      <WeekendChoice
        label={data.times.weekend}
        weekends={weekends(device.ledger())}
        value={times.weekendId()}
        onChange={times.chooseWeekend}
      />
      <label class="select-field">
        <span>{data.times.session}</span>
        <select onChange={(event) => times.chooseSession(event.currentTarget.value)}>
          <For each={times.sessions()}>
            {({ id, session }) => (
              <option value={id} selected={id === times.sessionId()}>
                {session.name}
              </option>
            )}
          </For>
        </select>
      </label>
      <FileField
        label={data.times.take}
        hint={data.times.hint}
        accept=".csv,.txt,text/csv,text/plain"
        onFile={(file) => void times.choose(file)}
      />
      <Show when={times.file()}>
        {(file) => (
          <>
            <h3>{data.times.columns}</h3>
            <p>{data.times.sessionHint}</p>
            <div class="data-columns">
              <For each={timingColumns}>
                {(column) => (
                  <label class="select-field">
                    <span>{data.times.column[column]}</span>
                    <select
                      onChange={(event) => {
                        const { value } = event.currentTarget;
                        times.map(column, value === "" ? undefined : Number(value));
                      }}
                    >
                      <option value="">{data.times.none}</option>
                      <For each={file().table.head}>
                        {(head, at) => (
                          <option value={at()} selected={at() === times.mapping()[column]}>
                            {head.trim() === "" ? data.times.unnamed(at() + 1) : head}
                          </option>
                        )}
                      </For>
                    </select>
                  </label>
                )}
              </For>
            </div>
            <button type="button" class="main" onClick={() => void times.look()}>
              {data.times.look}
            </button>
          </>
        )}
      </Show>
      <ImportSteps steps={times.steps} />
    </section>
  );
}
