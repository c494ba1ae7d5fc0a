import { handOff } from "#client/text/hand-off.ts";
import { SaveFile } from "./save-file.tsx";
import { TakeIn } from "./take-in.tsx";
import "./hand-off.css";

/** Hand-off between two devices that share no network. */
export function HandOff() {
  return (
    <div class="stack hand-off">
      <h1>{handOff.title}</h1>
      <p class="hand-off-hint">{handOff.hint}</p>
      <div class="columns">
        <SaveFile />
        <TakeIn />
      </div>
    </div>
  );
}
