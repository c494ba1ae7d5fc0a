import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { sections as words } from "#client/text/sections.ts";
import { Choice } from "#client/widgets/choice.tsx";
import type { RunLog } from "./create-run-log.ts";
import { sectionChoice } from "./section-options.ts";

/** Where on the course it was, by one tap; nothing while the team has named no section. */
export function SectionChoice(props: { log: RunLog; weekendId: string | undefined }) {
  const device = useDevice();
  const choice = createMemo(() => sectionChoice(device.ledger(), props.weekendId, props.log.draft().section));
  return (
    <Show when={choice()}>
      {(shown) => (
        <section class="run-where">
          <Choice
            legend={words.where}
            required
            options={shown().options}
            labelOf={(option) => shown().labelOf(option)}
            value={shown().chosen}
            onChange={(option) => props.log.changeSection(shown().sectionOf(option))}
          />
        </section>
      )}
    </Show>
  );
}
