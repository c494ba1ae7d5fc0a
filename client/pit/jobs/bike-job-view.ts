/** What somebody has to look at on a bike, in words: what a rider reported, what is in dispute, what needs service. */
import { ulid } from "ulid";
import { common } from "#client/text/common.ts";
import { jobQueue as words } from "#client/text/job-queue.ts";
import { trade } from "#client/text/trade.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { confirmationEntry } from "#core/planning/entries.ts";
import type { DisputeJob, ReportedJob, ServiceJob } from "#core/planning/jobs/job.ts";
import { isPlaceInDispute } from "#core/planning/open-disputes.ts";
import { serviceEntries } from "#core/planning/service-entries.ts";
import { riderBike } from "#core/team/roster.ts";
import { parseSettingKey, settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { claimLines, settledByClaim } from "../dispute-claims.ts";
import { disputeLine } from "../dispute-lines.ts";
import { valueText } from "../names.ts";
import { benchOccasion } from "../occasion.ts";
import { workLine } from "../service-lines.ts";
import { riderPlace } from "./job-place.ts";
import { type JobContext, type JobTouch, type TouchResult, writeEntries } from "./job-touch.ts";
import type { JobContent } from "./job-view.ts";

export function reportedView(context: JobContext, { mounted, path, current }: ReportedJob): JobContent {
  const value = valueText(settledValue(current)?.quantity);
  const head = current.state === "settled" ? current.heads[0] : undefined;
  const who = head ? memberName(context.device.ledger(), head.by) : common.notKnown;
  const touch: JobTouch = {
    id: "confirm",
    label: words.reported.touch(value),
    said: words.reported.said(trade.adjuster(path), value),
    write: () => writeEntries(context, confirmationEntry(mounted, path, current)),
  };
  return {
    what: words.valueOf(trade.adjuster(path), value),
    why: words.reported.why(who, head ? formatMoment(head.at) : common.notKnown),
    steps: [],
    touches: [touch],
    place: { label: words.atBench, path: riderPlace(mounted.riderId) },
  };
}

export function disputeView(context: JobContext, { dispute }: DisputeJob): JobContent {
  const { sentence, path } = disputeLine(context.device.ledger(), dispute);
  const touches = claimTouches(context, { dispute });
  return {
    what: sentence,
    why: touches.length > 0 ? words.dispute.look : words.dispute.why,
    steps: [],
    touches,
    place: path === undefined ? undefined : { label: words.dispute.go, path },
  };
}

/** Each claim about what is set on a bike of today's; all else is settled where it was entered. */
function claimTouches(context: JobContext, { dispute }: Pick<DisputeJob, "dispute">): readonly JobTouch[] {
  if (isPlaceInDispute(dispute)) return [];
  const { device, programme, sessionId } = context;
  const address = dispute.kind === settingKind.kind ? parseSettingKey(dispute.key) : undefined;
  const mounted = address && riderBike(device.ledger(), address.riderId);
  if (!address || !programme || mounted?.bikeId !== address.bikeId) return [];
  const claims = claimLines(device.ledger(), dispute.claims as readonly LedgerRecord<Setting>[]);
  return claims.flatMap(({ id, value, who, setting }): readonly JobTouch[] => {
    if (!setting) return [];
    const write = (): TouchResult => {
      const occasion = benchOccasion(mounted, settingsOnBike(device.ledger(), mounted), programme, sessionId);
      return device.resolve(settingKind, dispute.key, settledByClaim(setting, occasion));
    };
    return [
      {
        id,
        label: words.dispute.claim(value, who),
        labelAfterAll: words.dispute.claimAfterAll(value),
        said: words.valueOf(trade.adjuster(address.path), formatQuantity(setting.quantity)),
        write,
      },
    ];
  });
}

export function serviceView(context: JobContext, { mounted, place, status }: ServiceJob): JobContent {
  const line = workLine(context.device.ledger(), place, status);
  const write = (): TouchResult => {
    const weekendId = context.programme?.weekendId;
    const settings = settingsOnBike(context.device.ledger(), mounted);
    const done = { id: ulid(), mounted, place, what: status.work, settings };
    return writeEntries(context, serviceEntries({ ...done, ...(weekendId !== undefined && { weekendId }) }));
  };
  const said = words.service.said(common.places[place], line.name);
  return {
    what: words.valueOf(common.places[place], line.name),
    why: words.service.used(line.used, line.limit, line.left),
    steps: [],
    touches: [{ id: "done", label: words.service.touch, said, write }],
    place: { label: words.atBench, path: riderPlace(mounted.riderId) },
  };
}
