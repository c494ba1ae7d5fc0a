import { For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import type { LastLine, ServicePartLine, WorkLine } from "./service-lines.ts";

/** One part: each of its works with hours and state, and that its service was done. */
export function ServicePart(props: { part: ServicePartLine; onDone: () => void }) {
  return (
    <article class={props.part.state === "overdue" ? "card alarm stack" : "card stack"}>
      <h3>
        {props.part.title}: {props.part.name}
      </h3>
      <ul class="plain pit-service-works">
        <EachByKey each={props.part.works} keyOf={({ work }) => work}>
          {(work) => <Work line={work()} />}
        </EachByKey>
      </ul>
      <button type="button" onClick={() => props.onDone()}>
        {pit.service.done(props.part.title)}
      </button>
    </article>
  );
}

function Work(props: { line: WorkLine }) {
  return (
    <li class="pit-service-work">
      <div class="pit-row-head">
        <h4>{props.line.name}</h4>
        <span class={props.line.state === "in use" ? "tag" : "tag strong"}>{props.line.stateText}</span>
      </div>
      <p>
        <span class="value">{props.line.used}</span> {props.line.limit}
      </p>
      <p>{props.line.left}</p>
      <Show when={props.line.last} fallback={<p>{pit.service.neverDone}</p>}>
        {(last) => <Last line={last()} />}
      </Show>
    </li>
  );
}

function Last(props: { line: LastLine }) {
  return (
    <>
      <p>
        {props.line.sentence}. <Show when={props.line.hoursBefore}>{(hours) => <>{hours()} </>}</Show>
        {props.line.note}
      </p>
      <Show when={props.line.settings.length > 0}>
        <details>
          <summary class="pit-summary">{pit.service.onTheBikeThen(props.line.settings.length)}</summary>
          <ul>
            <For each={props.line.settings}>{(setting) => <li>{setting}</li>}</For>
          </ul>
        </details>
      </Show>
    </>
  );
}
