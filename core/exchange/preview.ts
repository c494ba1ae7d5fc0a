/** What taking in a file would change, subject by subject; nothing is written here. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { examineJson, sameJson, utf8Length } from "#core/ledger/plain-json.ts";
import { readValue } from "#core/ledger/read-record.ts";
import { allowedRecordBytes, isRecordKey, subjectOf } from "#core/ledger/record.ts";
import type { LedgerProblem, WriteEntry } from "#core/ledger/write.ts";
import { mountingKind } from "#core/team/record-kinds.ts";
import type { Candidate, Candidates, Refused } from "./candidate.ts";
import { type Difference, differences } from "./differences.ts";
import type { FilePlace } from "./file-place.ts";
import { fitProblem, type ValueLookup } from "./fit.ts";
import type { RowRefusal } from "./row-refusal.ts";

/** A value that can be taken in, and what it would change. */
export interface PreviewLine {
  readonly place: FilePlace;
  readonly state: "new" | "changes";
  readonly differences: readonly Difference[];
  readonly entry: WriteEntry;
}

export interface Preview {
  /** What would be written: the new ones and the changes, as they stand in the file. */
  readonly lines: readonly PreviewLine[];
  /** How many say what is so already. */
  readonly same: number;
  readonly refused: readonly Refused[];
}

/** An envelope around the value takes some of a record's bytes. */
const envelopeBytes = 4096;

/**
 * Judges every candidate: its key, its schema, and whether it fits the rest of the team as it will be. A candidate that
 * leans on a refused one is refused too. What is disputed here is refused: a file is no look at the bike.
 */
export function preview(ledger: Ledger, { candidates, refused: unread }: Candidates): Preview {
  const refused: Refused[] = [...unread];
  const subjects = new Set<string>();
  let standing: Judged[] = [];
  for (const candidate of candidates) {
    const judged = judge(ledger, candidate, subjects);
    if ("type" in judged) refused.push({ place: candidate.place, refusal: judged });
    else standing.push(judged);
  }
  for (let isSettled = false; !isSettled; ) {
    const brought = new Map(standing.map((each) => [subjectOf(each.kind.kind, each.key) as string, each.value]));
    const lookup: ValueLookup = (kind, key) => {
      const subject = subjectOf(kind.kind, key);
      if (brought.has(subject)) return brought.get(subject) as never;
      const current = ledger.current(kind, key);
      return current.state === "absent" ? undefined : current.value;
    };
    const broughtMountings = standing.filter(({ kind }) => kind.kind === mountingKind.kind).map(({ key }) => key);
    const moved = [...new Set([...ledger.keys(mountingKind), ...broughtMountings])];
    const kept: Judged[] = [];
    for (const each of standing) {
      const refusal = each.isSame ? undefined : fitProblem(each, lookup, moved);
      if (refusal === undefined) kept.push(each);
      else refused.push({ place: each.place, refusal });
    }
    isSettled = kept.length === standing.length;
    standing = kept;
  }
  return {
    lines: standing.flatMap(({ isSame, place, kind, key, value, before }) =>
      isSame
        ? []
        : [
            {
              place,
              state: before === undefined ? ("new" as const) : ("changes" as const),
              differences: before === undefined ? [] : differences(before, value),
              entry: { kind, key, value },
            },
          ],
    ),
    same: standing.filter(({ isSame }) => isSame).length,
    refused,
  };
}

type Judged = Candidate & { readonly before: unknown; readonly isSame: boolean };

function judge(ledger: Ledger, candidate: Candidate, subjects: Set<string>): Judged | RowRefusal {
  const { kind, key } = candidate;
  if (!isRecordKey(key)) return asRecord({ type: "bad key", kind: kind.kind, key: key.slice(0, 80) });
  const subject = subjectOf(kind.kind, key);
  if (subjects.has(subject)) return { type: "given twice" };
  subjects.add(subject);
  const { text, problem } = examineJson(candidate.value);
  if (problem) return asRecord({ type: "not plain", ...problem });
  const bytes = utf8Length(text);
  const allowedBytes = allowedRecordBytes - envelopeBytes;
  if (bytes > allowedBytes) return asRecord({ type: "too large", bytes, allowedBytes });
  const read = readValue(kind, subject, candidate.value);
  if (!read.ok) return asRecord(read.problem);
  const misfit = kind.misfit?.(key, read.value);
  if (misfit !== undefined) return asRecord({ type: "misfit", subject, sentence: misfit });
  const current = ledger.current(kind, key);
  if (current.state === "disputed") return { type: "disputed here" };
  const before = current.state === "settled" ? current.value : undefined;
  return { ...candidate, value: read.value, before, isSame: before !== undefined && sameJson(before, read.value) };
}

function asRecord(problem: LedgerProblem): RowRefusal {
  return { type: "record", problem };
}
