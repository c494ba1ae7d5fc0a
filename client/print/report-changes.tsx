import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { weekendReport } from "#client/text/weekend-report.ts";
import type { ReportedChanges } from "#core/planning/weekend-report.ts";
import { changeRow } from "./change-rows.ts";

const words = weekendReport.changes;

/** What was changed on a bike, when, by whom and why, and what the runs tell of it. */
export function ReportChanges(props: { changes: readonly ReportedChanges[] }) {
  const device = useDevice();
  const rows = createMemo(() => props.changes.map((made) => changeRow(device.ledger(), made)));
  return (
    <>
      <h3>{words.title}</h3>
      <Show when={rows().length > 0} fallback={<p>{words.none}</p>}>
        <table class="report-changes">
          <thead>
            <tr>
              <th scope="col">{words.when}</th>
              <th scope="col">{words.who}</th>
              <th scope="col">{words.what}</th>
              <th scope="col">{words.why}</th>
              <th scope="col">{words.outcome}</th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr>
                  <td>{row.when}</td>
                  <td>{row.who}</td>
                  <td>
                    <For each={row.what}>{(line) => <div>{line}</div>}</For>
                  </td>
                  <td>{row.why}</td>
                  <td>{row.outcome}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <p>{words.careful}</p>
      </Show>
    </>
  );
}
