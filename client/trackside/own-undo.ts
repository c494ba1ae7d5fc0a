/** The rider's last own act on this device, and taking it back. */
import { type Accessor, createMemo, createSignal } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { deviceId } from "#client/device/identity.ts";
import { browserStorage } from "#client/device/storage/browser-storage.ts";
import { takeBack } from "#client/device/take-back.ts";
import { ownActs } from "#client/text/own-acts.ts";
import { pit } from "#client/text/pit.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { sessionName } from "#client/widgets/names.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type LedgerRecord, splitSubject } from "#core/ledger/record.ts";
import { lastBatch, ownHeads } from "#core/planning/own-acts.ts";
import { parseSettingKey } from "#core/weekend/on-the-bike.ts";
import { decisionKind, runKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { Run } from "#core/weekend/run.ts";
import type { Setting } from "#core/weekend/setting.ts";

export interface OwnUndo {
  /** What it would take back; undefined while there is nothing. */
  readonly what: Accessor<string | undefined>;
  /** What was taken back last, or why it was not. */
  readonly said: Accessor<string | undefined>;
  undo(): void;
}

/** A run that a mechanic has answered is no longer the rider's to take back, nor a change that one has confirmed. */
export function createOwnUndo(
  device: Pick<Device, "ledger" | "memberId" | "revert">,
  riderId: Accessor<string>,
): OwnUndo {
  const here = deviceId(browserStorage());
  const [said, setSaid] = createSignal<string>();
  const last = createMemo(() => {
    const memberId = device.memberId();
    if (memberId === undefined) return undefined;
    const ledger = device.ledger();
    const own = ownHeads(ledger, [runKind, settingKind], { memberId, deviceId: here }, riderId());
    const records = lastBatch(ledger, own);
    const [record] = records ?? [];
    const what = record && nameOf(ledger, record);
    return records && what !== undefined ? { what, ids: records.map(({ id }) => id) } : undefined;
  });
  return {
    what: () => last()?.what,
    said,
    undo: () => {
      const act = last();
      if (!act) return;
      const result = takeBack(device, act.ids);
      setSaid(result.ok ? pit.undo.done(act.what) : recordProblemText(result.problem));
    },
  };
}

function nameOf(ledger: Ledger, { subject, value }: LedgerRecord): string | undefined {
  const { kind, key } = splitSubject(subject);
  if (kind === settingKind.kind) {
    const setting = value as Setting | undefined;
    const path = parseSettingKey(key)?.path;
    return setting?.standing === "reported" && path
      ? pit.undo.setting(adjusterLabel(path), formatQuantity(setting.quantity))
      : undefined;
  }
  if (ledger.current(decisionKind, key).state !== "absent") return undefined;
  const run = value as Run | undefined;
  return run && ownActs.run(sessionName(ledger, run));
}
