/** Why a row or a value of a file cannot be taken in, as facts and in English. */
import { describeLimitProblem, type LimitProblem } from "#core/advice/limits.ts";
import { describeLedgerProblem, type LedgerProblem } from "#core/ledger/write.ts";
import type { Place } from "#core/team/place.ts";

export type RowRefusal =
  /** Its key, its form, or its size is wrong. */
  | { readonly type: "record"; readonly problem: LedgerProblem }
  | { readonly type: "limit"; readonly problem: LimitProblem }
  /** The file has the same subject twice. */
  | { readonly type: "given twice" }
  | { readonly type: "disputed here" }
  | { readonly type: "disputed in the file" }
  /** It leans on something that there is not, here or among what can be taken in. */
  | { readonly type: "nothing to lean on"; readonly kind: string; readonly key: string }
  | { readonly type: "bike of another"; readonly bike: string; readonly owner: string }
  | { readonly type: "part of another place"; readonly part: string; readonly place: Place; readonly given: Place }
  | { readonly type: "no setting's key" }
  | { readonly type: "adjuster twice"; readonly adjuster: string; readonly baseline: string }
  /** A baseline is taken whole or not at all. */
  | { readonly type: "line refused" }
  | { readonly type: "no settled baseline" }
  | { readonly type: "unknown kind"; readonly allowed: readonly string[] }
  | { readonly type: "no object" }
  | { readonly type: "plate of another"; readonly plate: string; readonly rider: string; readonly said: string }
  | { readonly type: "plate of several"; readonly plate: string; readonly riders: readonly string[] }
  /** `plate` and `name` as the file has them; empty where it says nothing. */
  | { readonly type: "no rider" | "several riders"; readonly plate: string; readonly name: string }
  | { readonly type: "no session chosen"; readonly sessions: readonly string[] }
  | { readonly type: "unknown session"; readonly said: string; readonly sessions: readonly string[] }
  | { readonly type: "no time"; readonly said: string }
  | { readonly type: "disputed run" };

/** One sentence for a person: why, and what is allowed. */
export function describeRowRefusal(refusal: RowRefusal): string {
  switch (refusal.type) {
    case "record":
      return describeRecord(refusal.problem);
    case "limit":
      return describeLimitProblem(refusal.problem);
    case "given twice":
      return "It is given twice; each may be given once.";
    case "disputed here":
      return "It is disputed here. Settle that first, then take the file in again.";
    case "disputed in the file":
      return "It is disputed in the file: there is no one value to take in. Enter what is so by hand.";
    case "nothing to lean on":
      return `There is no ${refusal.kind} "${refusal.key}", neither here nor in the file as far as it can be taken in.`;
    case "bike of another":
      return `The bike ${refusal.bike} is that of ${refusal.owner}.`;
    case "part of another place":
      return `The part ${refusal.part} belongs at the ${refusal.place}, not at the ${refusal.given}.`;
    case "no setting's key":
      return "Its key is not of the form rider/bike/place.adjuster.";
    case "adjuster twice":
      return `${refusal.adjuster} is given twice for ${refusal.baseline}.`;
    case "line refused":
      return "One of its lines is refused, so none is taken.";
    case "no settled baseline":
      return "There is no such baseline that is settled here. A new one needs the mass, temperature and altitude it was found at: approve it from a weekend, or take it in as JSON.";
    case "unknown kind":
      return `There is no such kind; allowed are ${refusal.allowed.join(", ")}.`;
    case "no object":
      return "What stands here is no object; allowed are values by key.";
    case "plate of another":
      return `Plate ${refusal.plate} is ${refusal.rider} here, and the file says "${refusal.said}".`;
    case "plate of several":
      return `Plate ${refusal.plate} is on ${refusal.riders.join(" and ")} here.`;
    case "no rider":
      return `Nobody of the team fits: ${whoOf(refusal)}.`;
    case "several riders":
      return `More than one rider of the team fits: ${whoOf(refusal)}.`;
    case "no session chosen":
      return `Choose the session that the times are of; there are ${refusal.sessions.join(", ") || "none"}.`;
    case "unknown session":
      return `There is no session "${refusal.said}" in this weekend; there are ${refusal.sessions.join(", ") || "none"}.`;
    case "no time":
      return `"${refusal.said}" is no time of a run; allowed is 1:23.456, 83.456 or 1'23"456, with a point or a comma, above 0 and at most 60 minutes.`;
    case "disputed run":
      return "A run of this rider in this session is disputed. Settle that first, then take the file in again.";
  }
}

/** The place says already of which subject it is. */
function describeRecord(problem: LedgerProblem): string {
  switch (problem.type) {
    case "bad value":
      return sentenceOf(problem.fields.map(({ sentence }) => sentence).join("; "));
    case "misfit":
      return sentenceOf(problem.sentence);
    default:
      return describeLedgerProblem(problem);
  }
}

function sentenceOf(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function whoOf({ plate, name }: { readonly plate: string; readonly name: string }): string {
  return [plate && `plate ${plate}`, name].filter(Boolean).join(", ") || "no plate and no name";
}
