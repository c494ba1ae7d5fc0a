/** The gate of a team's JSON file: what it is, and its values one by one. */
import { isJsonObject } from "#core/ledger/plain-json.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import type { Candidate, ReadCandidates, Refused } from "./candidate.ts";
import { valuePlace } from "./file-place.ts";
import type { FileProblem } from "./file-problem.ts";
import { teamDataFormat, teamDataVersion } from "./team-data.ts";

/** Most values in one file: a team of 40 riders writes some 30,000 in a season. */
export const mostValues = 100_000;

/** Reads the text of a file. A file of another sort is a problem; in one of ours each bad value is refused by itself. */
export function readTeamData(text: string): ReadCandidates {
  let raw: unknown;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return problem({ type: "not JSON" });
  }
  if (!isJsonObject(raw) || raw.format !== teamDataFormat) {
    return problem({ type: "other format", allowed: teamDataFormat });
  }
  if (raw.version !== teamDataVersion) {
    const version = JSON.stringify(raw.version)?.slice(0, 20);
    return problem({ type: "other version", ...(version !== undefined && { version }), allowed: teamDataVersion });
  }
  if (!isJsonObject(raw.values)) return problem({ type: "no values" });
  return readValues(raw.values, isJsonObject(raw.disputed) ? raw.disputed : {});
}

function readValues(
  values: Readonly<Record<string, unknown>>,
  disputed: Readonly<Record<string, unknown>>,
): ReadCandidates {
  const candidates: Candidate[] = [];
  const refused: Refused[] = [];
  for (const [name, byKey] of Object.entries(values)) {
    const kind = allKinds.find((known) => known.kind === name);
    if (!kind) {
      const allowed = allKinds.map((each) => each.kind);
      refused.push({ place: valuePlace(name), refusal: { type: "unknown kind", allowed } });
    } else if (!isJsonObject(byKey)) {
      refused.push({ place: valuePlace(name), refusal: { type: "no object" } });
    } else {
      for (const [key, value] of Object.entries(byKey)) {
        candidates.push({ place: valuePlace(name, key), kind, key, value });
      }
    }
    if (candidates.length > mostValues) {
      return problem({ type: "too many values", most: mostValues });
    }
  }
  for (const [name, byKey] of Object.entries(disputed)) {
    if (!isJsonObject(byKey)) continue;
    for (const key of Object.keys(byKey).slice(0, mostValues)) {
      refused.push({ place: valuePlace(name, key), refusal: { type: "disputed in the file" } });
    }
  }
  return { ok: true, candidates, refused };
}

function problem(found: FileProblem): ReadCandidates {
  return { ok: false, problem: found };
}
