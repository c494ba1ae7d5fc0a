import { For, Show } from "solid-js";
import type { Bundle } from "#client/device/hand-off/bundle.ts";
import type { BundleNews } from "#client/device/hand-off/describe-bundle.ts";
import { handOff } from "#client/text/hand-off.ts";
import { headerLines, spanInWords } from "./create-take-in.ts";

/** What a file would bring, and the choice to merge it. */
export function BundleFacts(props: {
  header: Bundle["header"];
  news: BundleNews;
  onMerge: () => void;
  onLeave: () => void;
}) {
  return (
    <>
      <For each={headerLines(props.header)}>{(line) => <p>{line}</p>}</For>
      <Show when={props.news.records > 0} fallback={<strong>{handOff.takeIn.nothingNew}</strong>}>
        <p class="hand-off-count">{handOff.takeIn.fresh(props.news.records)}</p>
        <ul>
          <For each={props.news.people}>{(person) => <li>{handOff.takeIn.whose(person.name, person.records)}</li>}</For>
        </ul>
        <p>{spanInWords(props.news)}</p>
        <div class="row">
          <button type="button" class="main" onClick={() => props.onMerge()}>
            {handOff.takeIn.merge}
          </button>
          <button type="button" onClick={() => props.onLeave()}>
            {handOff.takeIn.leave}
          </button>
        </div>
      </Show>
    </>
  );
}
