import { createMemo } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { print } from "#client/text/print.ts";
import { createChosenPrint } from "./create-chosen-print.ts";
import { occasionLines } from "./occasion-lines.ts";
import { PageHead } from "./page-head.tsx";
import { PrintFrame } from "./print-frame.tsx";
import { PrintedCautions } from "./printed-cautions.tsx";
import { RuledLines } from "./ruled-lines.tsx";
import { TeamPrint } from "./team-print.tsx";
import { teamPrintView } from "./team-print-view.ts";

/** The team's sheet for one session, to be printed. */
export function TeamPrintScreen() {
  const device = useDevice();
  const chosen = createChosenPrint(device, "A4");
  const tables = createMemo(() =>
    teamPrintView(device.ledger(), chosen.programme()?.weekendId ?? "", chosen.session()?.id ?? ""),
  );
  const back = () =>
    device.member()?.role === "manager"
      ? { href: "/review", text: print.back.review }
      : { href: `/pit${chosen.query()}`, text: print.back.pit };
  return (
    <PrintFrame chosen={chosen} title={print.teamTitle} way="across" back={back()} ofSession ofTeam>
      <PageHead
        title={print.teamTitle}
        aside={chosen.session()?.session.name ?? ""}
        lines={occasionLines(chosen.programme(), chosen.session())}
      />
      <p>
        <strong>{print.first}</strong> {print.team.hint}
      </p>
      <TeamPrint tables={tables()} />
      <PrintedCautions more={[]} />
      <RuledLines title={print.notes} count={4} />
    </PrintFrame>
  );
}
