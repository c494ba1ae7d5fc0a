import { For, Show } from "solid-js";
import { trackside } from "#client/text/trackside.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { SeveralChoice } from "#client/widgets/several-choice.tsx";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { End } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { feelings, type Noticed } from "#core/weekend/run.ts";
import type { RunLog } from "./create-run-log.ts";
import { questionsOfEnd } from "./questions-of-end.ts";
import { restGood, withFeedback } from "./run-draft.ts";

/** What is asked of one end of the bike; nothing is chosen until it is said. */
export function EndQuestions(props: { end: End; mounted: RiderBike; log: RunLog }) {
  const questions = () => questionsOfEnd(props.mounted, props.end);
  const draft = () => props.log.draft()[props.end];
  const name = () => trackside.ends[props.end];
  const say = (said: Parameters<typeof withFeedback>[2]): void =>
    props.log.change(withFeedback(props.log.draft(), props.end, said));
  return (
    <section class="end-questions">
      <h2>{name()}</h2>
      <For each={questions().feelings}>
        {(feeling) => (
          <div class={feelings[feeling].length === 3 ? "thirds" : "halves"}>
            <Choice<string>
              legend={trackside.questions[feeling]}
              options={feelings[feeling]}
              labelOf={(word) => (trackside.feelings[feeling] as Readonly<Record<string, string>>)[word] ?? word}
              value={draft()[feeling]}
              onChange={(word) => say({ [feeling]: word })}
            />
          </div>
        )}
      </For>
      <button
        type="button"
        class="rest-good"
        onClick={() => props.log.change(restGood(props.log.draft(), props.end, questions().feelings))}
      >
        {trackside.run.restGood(name())}
      </button>
      <details open={(draft().noticed ?? []).length > 0}>
        <summary>{trackside.run.noticed(name())}</summary>
        <SeveralChoice<Noticed>
          legend={trackside.run.noticedHint}
          options={questions().noticed}
          labelOf={(word) => trackside.noticed[word]}
          values={draft().noticed ?? []}
          onChange={(noticed) => say({ noticed: noticed.length > 0 ? [...noticed] : undefined })}
        />
      </details>
      <Show when={questions().measured}>
        {(measured) => (
          <>
            <p class="field-name">{trackside.run.bottomOuts}</p>
            <Stepper
              label={`${name()}: ${trackside.run.bottomOuts}`}
              unit={trackside.run.bottomOutsUnit}
              value={draft().bottomOuts}
              step={1}
              start={0}
              minimum={0}
              maximum={99}
              onChange={(bottomOuts) => say({ bottomOuts })}
            />
            <details open={draft().sag !== undefined || draft().travelUsed !== undefined}>
              <summary>{trackside.run.measured(name())}</summary>
              <p class="field-name">{trackside.run.sag}</p>
              <Stepper
                label={`${name()}: ${trackside.run.sag}`}
                unit="mm"
                value={draft().sag}
                step={1}
                start={measured().usualSag}
                minimum={0}
                maximum={measured().stroke}
                onChange={(sag) => say({ sag })}
              />
              <p class="field-name">{trackside.run.travelUsed}</p>
              <Stepper
                label={`${name()}: ${trackside.run.travelUsed}`}
                unit="mm"
                value={draft().travelUsed}
                step={1}
                start={measured().stroke}
                minimum={0}
                maximum={measured().stroke}
                onChange={(travelUsed) => say({ travelUsed })}
              />
            </details>
          </>
        )}
      </Show>
    </section>
  );
}
