/** The manager's acts on a baseline, each with a sentence about what came of it, and its undo. */

import { type Accessor, createSignal } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { sentBack } from "#client/text/sent-back.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { type LedgerRecord, splitSubject } from "#core/ledger/record.ts";
import type { WriteResult } from "#core/ledger/write.ts";
import type { BaselineProposal } from "#core/planning/baseline-review.ts";
import { sendBackEntry } from "#core/planning/sent-back.ts";
import type { Baseline } from "#core/team/baseline.ts";
import type { CourseType } from "#core/team/course-type.ts";
import { baselineKind, sentBackKind } from "#core/team/record-kinds.ts";
import type { RiderBike } from "#core/team/roster.ts";

export interface Approval {
  readonly done: Accessor<string | undefined>;
  readonly problem: Accessor<string | undefined>;
  /** Undoes the last act; absent while there is none to undo. */
  readonly undo: Accessor<(() => void) | undefined>;
  /** What that undo says. */
  readonly undoLabel: Accessor<string>;
  readonly approve: (proposal: BaselineProposal) => void;
  /** Answers a proposal with a note instead; false when it was refused, so that the note can be kept. */
  readonly sendBack: (mounted: RiderBike, type: CourseType, weekendId: string, note: string) => boolean;
  /** Settles a dispute between versions by one of them. */
  readonly keep: (riderId: string, type: CourseType, value: Baseline) => void;
  /** Puts an old version in force again, as a new one. */
  readonly goBack: (riderId: string, type: CourseType, value: Baseline, version: number) => void;
}

/** The acts of one screen. */
export function createApproval(device: Pick<Device, "ledger" | "write" | "revert" | "resolve">): Approval {
  const [done, setDone] = createSignal<string>();
  const [problem, setProblem] = createSignal<string>();
  const [last, setLast] = createSignal<LedgerRecord>();
  const report = (result: WriteResult, sentence: string, unchanged = sentence): void => {
    setProblem(result.ok ? undefined : recordProblemText(result.problem));
    setDone(result.ok ? (result.unchanged ? unchanged : sentence) : undefined);
    setLast(result.ok ? result.records[0] : undefined);
  };
  const versionCount = (key: string): number => device.ledger().history(baselineKind, key).length;
  const undoLast = (): void => {
    const record = last();
    if (!record) return;
    report(device.revert(record.id), isSendBack(record) ? sentBack.undoneSendBack : review.weekend.undone);
    setLast(undefined);
  };
  return {
    done,
    problem,
    undo: () => (last() ? undoLast : undefined),
    undoLabel: () => {
      const record = last();
      return record && isSendBack(record) ? sentBack.undoSendBack : review.weekend.undo;
    },
    sendBack: (mounted, type, weekendId, note) => {
      if (note.trim() === "") {
        setProblem(sentBack.needsNote);
        setDone(undefined);
        return false;
      }
      const result = device.write([sendBackEntry(device.ledger(), mounted, type, weekendId, note)]);
      report(result, sentBack.sent(common.courseTypes[type]), sentBack.already);
      return result.ok;
    },
    approve: ({ entry, type }) => {
      const result = device.write([entry]);
      const name = common.courseTypes[type];
      report(result, review.weekend.approved(name, versionCount(entry.key)), review.weekend.unchanged(name));
    },
    keep: (riderId, type, value) => {
      const key = `${riderId}/${type}`;
      const result = device.resolve(baselineKind, key, value);
      report(result, review.weekend.approved(common.courseTypes[type], versionCount(key)));
      // Before it there was no single version to go back to.
      setLast(undefined);
    },
    goBack: (riderId, type, value, version) => {
      const cause = { type: "by hand", note: review.versions.backNote(version) } as const;
      const result = device.write([{ kind: baselineKind, key: `${riderId}/${type}`, value, cause }]);
      report(result, review.versions.backDone(version));
    },
  };
}

function isSendBack({ subject }: LedgerRecord): boolean {
  return splitSubject(subject).kind === sentBackKind.kind;
}
