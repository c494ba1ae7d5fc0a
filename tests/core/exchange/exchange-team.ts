/** Ledgers for the exchange: the demo team, and one that is empty. */
import type { Candidates, ReadCandidates } from "#core/exchange/candidate.ts";
import { describeFilePlace } from "#core/exchange/file-place.ts";
import { describeFileProblem } from "#core/exchange/file-problem.ts";
import { type Preview, preview } from "#core/exchange/preview.ts";
import { readTeamData } from "#core/exchange/read-team-data.ts";
import { describeRowRefusal } from "#core/exchange/row-refusal.ts";
import { teamData } from "#core/exchange/team-data.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { createWriter, type Writer } from "#core/ledger/write.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { documentForRecord } from "#core/weekend/documents.ts";
import { countingIds, written } from "#tests/builders/team-ledger.ts";

export function emptyTeam(): { readonly ledger: Ledger; readonly writer: Writer } {
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const writer = createWriter({
    ledger,
    append: () => {},
    newId: countingIds("03"),
    now: () => "2026-05-30T08:00:00.000Z",
    by: "heather",
    device: "laptop",
    documentFor: (kind, key) => documentForRecord(kind, key, 2026),
  });
  return { ledger, writer };
}

export function fileOf(ledger: Ledger): string {
  return JSON.stringify(teamData(ledger, "2026-05-30T08:00:00.000Z"));
}

export function accepted(read: ReadCandidates): Candidates {
  if (!read.ok) throw new Error(describeFileProblem(read.problem));
  return read;
}

export function previewOf(ledger: Ledger, text: string): Preview {
  return preview(ledger, accepted(readTeamData(text)));
}

/** What is refused, in English: where it stands, and why. */
export function refusedInWords({ refused }: Pick<Candidates, "refused">) {
  return refused.map(({ place, refusal }) => ({
    place: describeFilePlace(place),
    sentence: describeRowRefusal(refusal),
  }));
}

/** Takes in what a preview shows. */
export function takeIn(writer: Writer, { lines }: Preview): number {
  return written(writer.setMany(lines.map(({ entry }) => entry))).length;
}
