import { createSignal, Show } from "solid-js";
import { moments } from "#client/text/moments.ts";
import { pit } from "#client/text/pit.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { holdingInWords } from "#client/widgets/holding-in-words.ts";
import { ChangeFilters } from "./change-filters.tsx";
import type { ChangeLine } from "./change-lines.ts";
import { createChangeFilter } from "./create-change-filter.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { MomentsSection } from "./moments/moments-section.tsx";
import { firstPage, nextPage } from "./page-size.ts";
import { WhoHas } from "./who-has.tsx";

/** What was changed, by whom, when and why; newest first, some at a time. */
export function ChangelogSection(props: { bench: RiderBench; riderId: string; lines: readonly ChangeLine[] }) {
  const [shown, setShown] = createSignal(firstPage);
  const filter = createChangeFilter(() => props.lines);
  const next = () => nextPage(shown(), filter.lines().length);
  return (
    <section class="stack pit-part-changelog">
      <h2>{pit.changelog.title}</h2>
      <WhoHas bench={props.bench} riderId={props.riderId} />
      <Show when={props.lines.length > 0} fallback={<p>{pit.changelog.none}</p>}>
        <MomentsSection bench={props.bench} />
        <ChangeFilters filter={filter} ledger={props.bench.device.ledger()} onChange={() => setShown(firstPage)} />
        <Show when={filter.lines().length === 0}>
          <p>{moments.noneOfThese}</p>
        </Show>
        <ol class="plain stack">
          <EachByKey each={filter.lines().slice(0, shown())} keyOf={({ id }) => id}>
            {(line) => <ChangeEntry bench={props.bench} line={line()} />}
          </EachByKey>
        </ol>
        <Show when={next().more > 0}>
          <button type="button" onClick={() => setShown(next().shown)}>
            {pit.changelog.more(next().more)}
          </button>
        </Show>
      </Show>
    </section>
  );
}

function ChangeEntry(props: { bench: RiderBench; line: ChangeLine }) {
  const undo = (done: string): void => {
    props.bench.acts.wrote(props.bench.device.revert(props.line.id), done);
  };
  return (
    <li class="pit-change">
      <div class="pit-row-head">
        <strong>{props.line.adjuster}</strong>
        <span class="row">
          <Show when={props.line.standing === pit.changelog.standings.reported}>
            <span class="tag">{props.line.standing}</span>
          </Show>
          <Show when={props.line.holds}>
            {(holds) => (
              <span class="tag strong">{holds() === "current" ? pit.changelog.current : pit.changelog.inDispute}</span>
            )}
          </Show>
        </span>
      </div>
      <p class="pit-change-values">{pit.changelog.line(props.line.from, props.line.to)}</p>
      <Show when={props.line.bike}>{(bike) => <p>{bike()}</p>}</Show>
      <p>
        {props.line.who}, {props.line.when}
      </p>
      <p>{props.line.why}</p>
      <p class="small">{holdingInWords(props.bench.device.ledger(), props.bench.device.holdingOf(props.line.id))}</p>
      <Show when={props.line.run}>{(run) => <p>{pit.changelog.forRun(run())}</p>}</Show>
      <Show when={props.line.undo}>
        {(way) => (
          <button type="button" onClick={() => undo(way().done)}>
            {way().label}
          </button>
        )}
      </Show>
    </li>
  );
}
