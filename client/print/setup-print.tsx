import { createMemo, For } from "solid-js";
import { print } from "#client/text/print.ts";
import type { SetupSheet } from "#core/planning/setup-sheet.ts";
import { BenchPrint } from "./bench-print.tsx";
import { headLines } from "./occasion-lines.ts";
import { PageHead } from "./page-head.tsx";
import { PencilBox } from "./pencil-box.tsx";
import { RuledLines } from "./ruled-lines.tsx";
import { setupPrintView } from "./setup-print-view.ts";

const { columns } = print;

/** The sheet of one rider: the setup, the way to it, and room for a pencil. */
export function SetupPrint(props: { sheet: SetupSheet }) {
  const view = createMemo(() => setupPrintView(props.sheet));
  const head = createMemo(() => headLines(props.sheet));
  return (
    <>
      <PageHead title={head().title} aside={head().aside} lines={head().lines} />
      <p>
        <strong>{print.first}</strong>
      </p>
      <table class="print-setup">
        <thead>
          <tr>
            <th scope="col">{columns.adjuster}</th>
            <th scope="col">{columns.baseline}</th>
            <th scope="col">{columns.weekend}</th>
            <th scope="col">{columns.bench}</th>
            <th scope="col">{columns.onTheBike}</th>
            <th scope="col">{columns.read}</th>
          </tr>
        </thead>
        <For each={view().groups}>
          {(group) => (
            <tbody>
              <tr class="print-group">
                <th scope="rowgroup" colspan="6">
                  <strong>{group.title}</strong>
                </th>
              </tr>
              <For each={group.rows}>
                {(row) => (
                  <tr data-row>
                    <th scope="row">{row.name}</th>
                    <td>{row.baseline}</td>
                    <td>{row.weekend}</td>
                    <td class="print-target">{row.bench}</td>
                    <td>
                      {row.onTheBike} <em>{row.standing}</em>
                    </td>
                    <td>
                      <PencilBox />
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          )}
        </For>
      </table>
      <ul class="print-remarks">
        <For each={view().remarks}>{(remark) => <li>{remark}</li>}</For>
      </ul>
      <p class="print-sags">
        <strong>{print.sag.title}</strong>
        <For each={view().sags}>
          {(sag) => (
            <span>
              {sag} <PencilBox /> {print.sag.millimetres}
            </span>
          )}
        </For>
      </p>
      <BenchPrint
        mounted={props.sheet.mounted}
        sequence={props.sheet.sequence}
        occasion={[head().title, head().lines[0]].join(". ")}
      />
      <RuledLines title={print.notes} count={4} />
    </>
  );
}
