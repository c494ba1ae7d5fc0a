/** The adjuster that a move of a rule is about. */
import { type AdjusterPath, adjusterPath } from "#core/team/adjuster.ts";
import { type End, suspensionOf, tyreOf } from "#core/team/place.ts";
import type { Move } from "./feedback-rule.ts";

/** The end that the move is made at, for symptoms of `end`. */
export function endOfMove(move: Move, end: End): End {
  return move.end === "other" ? (end === "front" ? "rear" : "front") : end;
}

/** The adjuster that it moves, for symptoms of `end`. */
export function pathOfMove(move: Move, end: End): AdjusterPath {
  const at = endOfMove(move, end);
  return adjusterPath(move.at === "tyre" ? tyreOf(at) : suspensionOf(at), move.adjuster);
}
