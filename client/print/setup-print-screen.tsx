import { useParams } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { print } from "#client/text/print.ts";
import { trade } from "#client/text/trade.ts";
import { setupSheet } from "#core/planning/setup-sheet.ts";
import { createChosenPrint } from "./create-chosen-print.ts";
import { PrintFrame } from "./print-frame.tsx";
import { SetupPrint } from "./setup-print.tsx";

/** One rider's setup sheet, to be printed. */
export function SetupPrintScreen() {
  const device = useDevice();
  const params = useParams<{ riderId: string }>();
  const chosen = createChosenPrint(device, "A5");
  const riderId = () => params.riderId ?? "";
  const result = createMemo(() =>
    setupSheet(device.ledger(), chosen.programme()?.weekendId ?? "", chosen.session()?.id ?? "", riderId()),
  );
  const sheet = () => {
    const found = result();
    return found.ok ? found.sheet : undefined;
  };
  const problem = () => {
    const found = result();
    return found.ok ? "" : trade.sheetProblem(found.problem);
  };
  const back = () =>
    device.member()?.role === "rider"
      ? { href: "/trackside", text: print.back.rider }
      : { href: `/pit/rider/${riderId()}${chosen.query()}`, text: print.back.rider };
  return (
    <PrintFrame chosen={chosen} title={print.sheetTitle} way="upright" back={back()} ofSession ofTeam={false}>
      <Show when={sheet()} fallback={<p>{problem()}</p>}>
        {(found) => <SetupPrint sheet={found()} />}
      </Show>
    </PrintFrame>
  );
}
