import { A } from "@solidjs/router";
import { useDevice } from "#client/device/device-context.tsx";
import { bundleEnding } from "#client/device/hand-off/bundle.ts";
import { handOff } from "#client/text/hand-off.ts";
import { createTakeIn } from "./create-take-in.ts";
import { TakeInSteps } from "./take-in-steps.tsx";

/** What another device hands over into this one. */
export function TakeIn() {
  const takeIn = createTakeIn(useDevice());
  const choose = (input: HTMLInputElement): void => {
    const file = input.files?.[0];
    // Emptied, so that choosing the same file once more is a choice too.
    if (file)
      void takeIn.read(file).finally(() => {
        input.value = "";
      });
  };
  return (
    <section class="card stack">
      <h2>{handOff.takeIn.title}</h2>
      <label class="button main take-in">
        {handOff.takeIn.action}
        <input type="file" aria-describedby="take-in-hint" onChange={(event) => choose(event.currentTarget)} />
      </label>
      <p id="take-in-hint">{handOff.takeIn.ending(bundleEnding)}</p>
      <TakeInSteps takeIn={takeIn} />
      <A href="/hand-off/take-in" class="button main">
        {handOff.takeIn.byCodes}
      </A>
    </section>
  );
}
