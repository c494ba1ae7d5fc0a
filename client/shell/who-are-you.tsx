import { A, useNavigate } from "@solidjs/router";
import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { handOff } from "#client/text/hand-off.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { roles } from "#core/team/people.ts";
import { members } from "#core/team/roster.ts";
import { DeviceFacts } from "./device-facts.tsx";
import { LanguageChoice } from "./language-choice.tsx";
import { UnitChoice } from "./unit-choice.tsx";
import { workplacePath } from "./workplace-path.ts";

/** The choice of who holds this device. */
export function WhoAreYou() {
  const device = useDevice();
  const navigate = useNavigate();
  const everybody = createMemo(() => members(device.ledger()));
  const choose = (id: string): void => {
    const chosen = everybody().find((entry) => entry.id === id);
    if (!chosen) return;
    device.identify(id);
    navigate(workplacePath(chosen.member));
  };
  return (
    <div class="stack">
      <h1>{common.whoAreYou.title}</h1>
      <p>{common.whoAreYou.hint}</p>
      <Show when={everybody().length > 0} fallback={<p>{device.loaded() ? common.whoAreYou.none : common.loading}</p>}>
        <For each={roles}>
          {(role) => (
            <section>
              <h2>{common.roles[role]}</h2>
              <div class="row">
                <EachByKey each={everybody().filter((entry) => entry.member.role === role)} keyOf={({ id }) => id}>
                  {(entry) => (
                    <button
                      type="button"
                      onClick={() => choose(entry().id)}
                      aria-pressed={device.memberId() === entry().id}
                    >
                      {entry().member.name}
                    </button>
                  )}
                </EachByKey>
              </div>
            </section>
          )}
        </For>
      </Show>
      <div class="row">
        <A href="/hand-off" class="button">
          {handOff.link}
        </A>
      </div>
      <LanguageChoice />
      <UnitChoice />
      <DeviceFacts />
    </div>
  );
}
