/** What was said of a run, in words. */
import { trackside } from "#client/text/english/trackside.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { type End, ends } from "#core/team/place.ts";
import type { EndFeedback, Run } from "#core/weekend/run.ts";
import { asked } from "./run-draft.ts";
import { formatRunTime } from "./run-time.ts";

const { said } = trackside;

/** One line for each end that something was said of, then one for the whole run. */
export function describeRun(run: Run): readonly string[] {
  const whole = [
    ...(run.confidence === undefined ? [] : [said.confidence(trackside.confidences[run.confidence])]),
    ...(run.timeSeconds === undefined ? [] : [said.time(formatRunTime(run.timeSeconds))]),
  ];
  return [...ends.flatMap((end) => describeEnd(end, run[end])), ...(whole.length > 0 ? [`${whole.join(". ")}.`] : [])];
}

function describeEnd(end: End, feedback: EndFeedback): readonly string[] {
  const words = [
    ...feltWords(feedback),
    ...(feedback.bottomOuts === undefined
      ? []
      : [feedback.bottomOuts === 0 ? said.neverBottomed : said.bottomOuts(feedback.bottomOuts)]),
    ...(feedback.sag ? [said.sag(formatQuantity(feedback.sag))] : []),
    ...(feedback.travelUsed ? [said.travelUsed(formatQuantity(feedback.travelUsed))] : []),
  ];
  return words.length > 0 ? [`${trackside.ends[end]}: ${words.join(", ")}.`] : [];
}

/** In short when all that can be asked was said to be good. */
function feltWords(feedback: EndFeedback): readonly string[] {
  if (asked.every((feeling) => feedback[feeling] === "good")) return [said.allGood];
  return asked.flatMap((feeling) => {
    const answer = feedback[feeling];
    const catalogue: Readonly<Record<string, string>> = trackside.feelings[feeling];
    return answer === undefined ? [] : [`${said[feeling]} ${catalogue[answer] ?? answer}`];
  });
}
