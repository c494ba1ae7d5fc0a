import { For, Show } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { StepList } from "#client/pit/step-list.tsx";
import { WorkCautions } from "#client/pit/work-cautions.tsx";
import { moments } from "#client/text/moments.ts";
import { spareBike } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import { OptionSelect } from "#client/widgets/option-select.tsx";
import { CopyTable } from "./copy-table.tsx";
import { createCopy, type SetupCopying } from "./create-copy.ts";

/** One bike's setup as another would get it: what differs, what is refused and why, and taking it or leaving it. */
export function CopySection(props: { bench: RiderBench }) {
  const copy = createCopy(props.bench);
  const words = spareBike.copy;
  return (
    <section class="stack">
      <h2>{words.title}</h2>
      <div class="row">
        <OptionSelect
          label={words.from}
          options={copy.options()}
          chosen={copy.fromId()}
          onChoose={(id) => copy.chooseFrom(id)}
        />
        <OptionSelect
          label={words.to}
          options={copy.options()}
          chosen={copy.toId()}
          placeholder={spareBike.move.choose}
          onChoose={(id) => copy.chooseTo(id)}
        />
      </div>
      <Show when={copy.lines()} fallback={<p>{words.isTheSame}</p>}>
        {(lines) => (
          <>
            <h3>{words.differencesTitle}</h3>
            <Show when={copy.differences().length > 0} fallback={<p>{words.noDifferences}</p>}>
              <ul>
                <For each={copy.differences()}>{(sentence) => <li>{sentence}</li>}</For>
              </ul>
            </Show>
            <CopyTable lines={lines()} isAtTheBench={copy.sequence() !== undefined} />
            <For each={copy.sameSag()}>{(sentence) => <p class="pit-estimate">{sentence}</p>}</For>
            <Show when={copy.sequence()} fallback={<p>{moments.needsConditions}</p>}>
              {(sequence) => (
                <>
                  <For each={sequence().blocked}>{(problem) => <p class="problem">{trade.limit(problem)}</p>}</For>
                  <Show when={sequence().steps.length > 0} fallback={<p>{words.nothing}</p>}>
                    <Steps copy={copy} />
                  </Show>
                </>
              )}
            </Show>
          </>
        )}
      </Show>
    </section>
  );
}

function Steps(props: { copy: SetupCopying }) {
  const isMeant = makeOneTouch();
  const steps = () => props.copy.sequence()?.steps ?? [];
  return (
    <>
      <WorkCautions />
      <p>{spareBike.copy.order}</p>
      <StepList steps={steps()} />
      <p>{spareBike.copy.leave}</p>
      <div>
        <button type="button" class="main" onClick={(event) => isMeant(event.timeStamp) && props.copy.take()}>
          {spareBike.copy.take(steps().length, props.copy.toName())}
        </button>
      </div>
    </>
  );
}
