import { For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { review } from "#client/text/review.ts";
import { holdingInWords } from "#client/widgets/holding-in-words.ts";
import type { ChangeLine } from "./changelog-view.ts";

/** A table where there is room, one card a change on a phone. */
export function ChangelogTable(props: { lines: readonly ChangeLine[] }) {
  const device = useDevice();
  return (
    <table class="changelog">
      <thead>
        <tr>
          <th scope="col">{review.changelog.when}</th>
          <th scope="col">{review.changelog.who}</th>
          <th scope="col">{review.changelog.rider}</th>
          <th scope="col">{review.changelog.what}</th>
          <th scope="col">{review.changelog.why}</th>
          <th scope="col">{review.changelog.where}</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.lines}>
          {(line) => (
            <tr>
              <td class="when">{line.when}</td>
              <td data-label={review.changelog.who}>{line.who}</td>
              <td data-label={review.changelog.rider}>{line.rider}</td>
              <td>
                <div>{line.what}</div>
                <strong class="step">
                  <Show when={line.before}>{(before) => <>{before()} → </>}</Show>
                  {line.after}
                </strong>
              </td>
              <td class="why">
                <For each={line.why}>{(sentence) => <div>{sentence}</div>}</For>
              </td>
              <td class="where" data-label={review.changelog.where}>
                {holdingInWords(device.ledger(), device.holdingOf(line.id))}
              </td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
