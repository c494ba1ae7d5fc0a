import { createSignal, For, Show } from "solid-js";
import { cautions } from "#client/text/cautions.ts";
import { pit } from "#client/text/pit.ts";

/**
 * What can hurt somebody at the bench, in view where there is something to set. It can be folded away only for the
 * moment: nothing remembers it, and the title and the cautions of each step stay.
 */
export function WorkCautions(props: { always?: boolean | undefined }) {
  const [isFolded, setFolded] = createSignal(false);
  return (
    <div class="caution" role="note">
      <strong>{pit.bench.cautionsTitle}</strong>
      <Show when={!isFolded()} fallback={<p>{cautions.folded}</p>}>
        <ul>
          <For each={pit.bench.cautions}>{(sentence) => <li>{sentence}</li>}</For>
        </ul>
      </Show>
      <Show when={!props.always}>
        <button type="button" onClick={() => setFolded(!isFolded())}>
          {isFolded() ? cautions.show : cautions.fold}
        </button>
      </Show>
    </div>
  );
}
