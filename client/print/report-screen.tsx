import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { print } from "#client/text/print.ts";
import { weekendReport as words } from "#client/text/weekend-report.ts";
import { weekendReport } from "#core/planning/weekend-report.ts";
import { CellTable } from "./cell-table.tsx";
import { createChosenPrint } from "./create-chosen-print.ts";
import { occasionLines } from "./occasion-lines.ts";
import { PageHead } from "./page-head.tsx";
import { PrintFrame } from "./print-frame.tsx";
import { sessionRows } from "./report-view.ts";
import { RiderReportPrint } from "./rider-report-print.tsx";

const { sessions } = words;

/** The report of a weekend, to be read and printed. */
export function ReportScreen() {
  const device = useDevice();
  const chosen = createChosenPrint(device, "A4");
  const report = createMemo(() => weekendReport(device.ledger(), chosen.programme()?.weekendId ?? ""));
  const back = () =>
    device.member()?.role === "mechanic"
      ? { href: "/pit", text: print.back.pit }
      : { href: "/review", text: print.back.review };
  return (
    <PrintFrame chosen={chosen} title={words.title} way="upright" back={back()} ofSession={false} ofTeam>
      <Show when={report()}>
        {(found) => (
          <>
            <PageHead
              title={found().programme.weekend.name}
              aside={words.title}
              lines={occasionLines(found().programme, undefined).slice(1)}
            />
            <Show when={!found().programme.course}>
              <p>{sessions.noCourse}</p>
            </Show>
            <h3>{sessions.title}</h3>
            <CellTable
              class="report-sessions"
              columns={[sessions.session, sessions.start, sessions.air, sessions.bench, sessions.ground, sessions.runs]}
              rows={sessionRows(found())}
            />
            <For each={found().riders} fallback={<p>{words.noRiders}</p>}>
              {(rider) => <RiderReportPrint programme={found().programme} rider={rider} />}
            </For>
          </>
        )}
      </Show>
    </PrintFrame>
  );
}
