import { A } from "@solidjs/router";
import { createMemo, createSignal, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { rulesText } from "#client/text/rules.ts";
import { trade } from "#client/text/trade.ts";
import type { RuleText } from "#core/advice/rule-entry.ts";
import { matchingChapters, ruleBook } from "./matching-rules.ts";

/** Every rule that the advice goes by, with its reason and source. It is made from the rules themselves. */
export function RulesPage() {
  const [words, setWords] = createSignal("");
  const book = ruleBook();
  const chapters = createMemo(() => matchingChapters(book, words()));
  return (
    <div class="stack">
      <div class="row">
        <A href="/pit" class="button">
          {pit.backToTeam}
        </A>
      </div>
      <h1>{rulesText.title}</h1>
      <label class="field">
        {rulesText.find}
        <input type="text" value={words()} onInput={(event) => setWords(event.currentTarget.value)} />
      </label>
      <For each={chapters()} fallback={<p>{rulesText.none}</p>}>
        {(chapter) => (
          <section class="stack">
            <h2>{chapter.title}</h2>
            <p>{chapter.about}</p>
            <For each={chapter.entries}>{(entry) => <RuleCard entry={entry} />}</For>
          </section>
        )}
      </For>
    </div>
  );
}

function RuleCard(props: { entry: RuleText }) {
  return (
    <article class="card">
      <h3>{props.entry.reason}</h3>
      <dl class="pit-why">
        <dt>{rulesText.when}</dt>
        <dd>{props.entry.when}</dd>
        <Show when={props.entry.moves.length > 0}>
          <dt>{rulesText.moves}</dt>
          <dd>
            <ol>
              <For each={props.entry.moves}>{(move) => <li>{move}</li>}</For>
            </ol>
          </dd>
        </Show>
        <Show when={props.entry.notice}>
          {(notice) => (
            <>
              <dt>{pit.advice.notice}</dt>
              <dd>{notice()}</dd>
            </>
          )}
        </Show>
        <Show when={props.entry.otherwise}>
          {(otherwise) => (
            <>
              <dt>{pit.advice.otherwise}</dt>
              <dd>{otherwise()}</dd>
            </>
          )}
        </Show>
      </dl>
      <p class="small">{pit.advice.provenance(trade.provenances[props.entry.provenance])}</p>
    </article>
  );
}
