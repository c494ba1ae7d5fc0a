import { type JSX, Show } from "solid-js";
import type { CodeSequence } from "#client/device/hand-off/codes/code-sequence.ts";
import { handOffCodes } from "#client/text/hand-off-codes.ts";
import { createCodeShow, pagePace } from "./create-code-show.ts";

/** One code, or one after the other until somebody pauses; as large as the screen lets it be. What to do with it is said beside it. */
export function ShowCodes(props: { sequence: CodeSequence; children: JSX.Element }) {
  const show = createCodeShow(props.sequence, pagePace());
  const isOne = () => props.sequence.blocks === 1;
  return (
    <div class="code-stage">
      <canvas
        class="code"
        role="img"
        aria-label={isOne() ? handOffCodes.code.one : handOffCodes.code.name(show.number())}
        ref={show.drawIn}
      />
      <div class="stack">
        <Show when={!isOne()}>
          <div class="row">
            <Show
              when={show.isPlaying()}
              fallback={
                <button type="button" class="main" onClick={show.play}>
                  {handOffCodes.code.play}
                </button>
              }
            >
              <button type="button" class="main" onClick={show.pause}>
                {handOffCodes.code.pause}
              </button>
            </Show>
            <button type="button" class="main" onClick={show.next}>
              {handOffCodes.code.next}
            </button>
            <span class="code-number" aria-hidden="true">
              {handOffCodes.code.name(show.number())}
            </span>
          </div>
          <p>{handOffCodes.code.several(props.sequence.blocks, show.duration)}</p>
        </Show>
        {props.children}
      </div>
    </div>
  );
}
