import { For, Show } from "solid-js";
import { StepList } from "#client/pit/step-list.tsx";
import { WorkCautions } from "#client/pit/work-cautions.tsx";
import { moments as words } from "#client/text/moments.ts";
import { trade } from "#client/text/trade.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import type { BackToMoment } from "#core/planning/back-to-moment.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";

/** The steps of a way back with what to mind at each, what they leave alone and why, and the word that it is done. */
export function BackSteps(props: { plan: BackToMoment; onDone: () => void }) {
  const isMeant = makeOneTouch();
  const names = (paths: readonly AdjusterPath[]): string => paths.map(trade.adjuster).join(", ");
  return (
    <>
      <For each={props.plan.blocked}>{(problem) => <p class="problem">{trade.limit(problem)}</p>}</For>
      <Show when={props.plan.disputed.length > 0}>
        <p>{words.leftOut(names(props.plan.disputed))}</p>
      </Show>
      <Show when={props.plan.unknownThen.length > 0}>
        <p>{words.unknownThen(names(props.plan.unknownThen))}</p>
      </Show>
      <Show when={props.plan.steps.length + props.plan.blocked.length + props.plan.unknownThen.length === 0}>
        <p>{words.already}</p>
      </Show>
      <Show when={props.plan.steps.length > 0}>
        <WorkCautions />
        <p>{words.order}</p>
        <StepList steps={props.plan.steps} />
        <button type="button" class="main" onClick={(event) => isMeant(event.timeStamp) && props.onDone()}>
          {words.back}
        </button>
      </Show>
    </>
  );
}
