/** The gate of a team's JSON file: what it is, and its values one by one. */
import { isJsonObject } from "#core/ledger/plain-json.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import type { Candidate, ReadCandidates, Refused } from "./candidate.ts";
import { teamDataFormat, teamDataVersion } from "./team-data.ts";

/** Most values in one file: a team of 40 riders writes some 30,000 in a season. */
export const mostValues = 100_000;

/** Reads the text of a file. A file of another sort is a problem; in one of ours each bad value is refused by itself. */
export function readTeamData(text: string): ReadCandidates {
  let raw: unknown;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return problem("not JSON", "This file is not JSON, or it is cut off. Choose a file with the team's data.");
  }
  if (!isJsonObject(raw) || raw.format !== teamDataFormat) {
    return problem(
      "other format",
      `This is not a file with a team's data: its "format" has to be "${teamDataFormat}".`,
    );
  }
  if (raw.version !== teamDataVersion) {
    return problem(
      "other version",
      `This file has the version ${JSON.stringify(raw.version)?.slice(0, 20) ?? "(none)"}; this program reads version ${teamDataVersion}.`,
    );
  }
  if (!isJsonObject(raw.values))
    return problem("no values", 'This file has no "values"; allowed is an object of kinds.');
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
      const known = allKinds.map((each) => each.kind).join(", ");
      refused.push({ place: shown(name), sentence: `There is no such kind; allowed are ${known}.` });
    } else if (!isJsonObject(byKey)) {
      refused.push({ place: shown(name), sentence: "What stands here is no object; allowed are values by key." });
    } else {
      for (const [key, value] of Object.entries(byKey)) {
        candidates.push({ place: `${name} ${shown(key)}`, kind, key, value });
      }
    }
    if (candidates.length > mostValues) {
      return problem("too many", `This file holds more than ${mostValues} values; take it in as several files.`);
    }
  }
  for (const [name, byKey] of Object.entries(disputed)) {
    if (!isJsonObject(byKey)) continue;
    for (const key of Object.keys(byKey).slice(0, mostValues)) {
      const sentence = "It is disputed in the file: there is no one value to take in. Enter what is so by hand.";
      refused.push({ place: `${shown(name)} ${shown(key)}`, sentence });
    }
  }
  return { ok: true, candidates, refused };
}

function shown(name: string): string {
  return `"${name.slice(0, 80)}"`;
}

function problem(type: string, sentence: string): ReadCandidates {
  return { ok: false, problem: { type, sentence } };
}
