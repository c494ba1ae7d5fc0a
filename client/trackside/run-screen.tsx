import { A, useNavigate } from "@solidjs/router";
import { type Accessor, createSignal } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { tabStorage } from "#client/device/storage/browser-storage.ts";
import { trackside } from "#client/text/trackside.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { formatClock } from "#client/widgets/format.ts";
import { focusInvalidField } from "#client/widgets/invalid-field.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { WeekendChoice } from "#client/widgets/weekend-choice.tsx";
import { ends } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { confidences } from "#core/weekend/run.ts";
import type { RiderAtHand } from "./create-rider-at-hand.ts";
import { createRunLog } from "./create-run-log.ts";
import { describeRun } from "./describe-run.ts";
import { EndQuestions } from "./end-questions.tsx";
import { RiderGate } from "./rider-gate.tsx";
import { SectionChoice } from "./section-choice.tsx";
import { SessionChoice } from "./session-choice.tsx";

/** The log of one run: taps only, unless the rider has more to say. */
export function RunScreen() {
  return <RiderGate>{(at, mounted) => <RunForm at={at} mounted={mounted} />}</RiderGate>;
}

function RunForm(props: { at: RiderAtHand; mounted: Accessor<RiderBike> }) {
  const device = useDevice();
  const navigate = useNavigate();
  const log = createRunLog({ device, riderId: props.mounted().riderId, storage: tabStorage() });
  const [problem, setProblem] = createSignal<string>();
  let form: HTMLFormElement | undefined;
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    setProblem(undefined);
    const plan = props.at.plan();
    const session = props.at.session();
    if (!plan || !session) return void setProblem(trackside.noSessions);
    if (focusInvalidField(form) !== undefined) return void setProblem(trackside.run.wrongNumber);
    const saved = log.save(props.mounted(), plan.weekendId, session.id);
    if (!saved.ok) return void setProblem(saved.sentence);
    const said = describeRun(saved.run);
    navigate(`/trackside${props.at.query()}`, {
      state: {
        saved: trackside.run.saved(session.session.name, formatClock(Date.now())),
        said: said.length > 0 ? said : [trackside.run.savedAlone],
      },
    });
  };
  return (
    <form ref={form} class="run-form" onSubmit={save} novalidate>
      <h1>{trackside.run.title}</h1>
      <SessionChoice at={props.at} />
      <p>{trackside.run.hint}</p>
      <div class="run-columns">
        {ends.map((end) => (
          <EndQuestions end={end} mounted={props.mounted()} log={log} />
        ))}
        <SectionChoice log={log} weekendId={props.at.plan()?.weekendId} />
        <section class="whole-run">
          <h2>{trackside.run.whole}</h2>
          <div class="run-columns">
            <div class="thirds">
              <Choice
                legend={trackside.run.confidence}
                options={confidences}
                labelOf={(word) => trackside.confidences[word]}
                value={log.draft().confidence}
                onChange={log.changeConfidence}
              />
            </div>
            <label class="text-field">
              <span>{trackside.run.time}</span>
              <input
                type="text"
                inputmode="decimal"
                autocomplete="off"
                value={log.draft().time}
                onInput={(event) => log.change({ ...log.draft(), time: event.currentTarget.value })}
              />
            </label>
            <label class="text-field">
              <span>{trackside.run.note}</span>
              <textarea
                rows={2}
                maxlength={1000}
                value={log.draft().note}
                onInput={(event) => log.change({ ...log.draft(), note: event.currentTarget.value })}
              />
            </label>
          </div>
        </section>
      </div>
      <div class="stack">
        <WeekendChoice
          label={trackside.choose.weekend}
          weekends={props.at.weekendChoices()}
          value={props.at.plan()?.weekendId}
          onChange={props.at.chooseWeekend}
        />
        <A class="button" href={`/trackside${props.at.query()}`}>
          {trackside.run.back}
        </A>
      </div>
      <div class="save-bar">
        <Problem sentence={problem()} />
        <button type="submit" class="main">
          {trackside.run.save}
        </button>
      </div>
    </form>
  );
}
