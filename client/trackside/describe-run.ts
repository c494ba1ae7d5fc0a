/** What was said of a run, in words. */

import { sections } from "#client/text/sections.ts";
import { trackside } from "#client/text/trackside.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { formatRunTime } from "#client/widgets/format-run-time.ts";
import { sectionName } from "#client/widgets/section-name.ts";
import { type End, ends } from "#core/team/place.ts";
import type { EndFeedback, Run } from "#core/weekend/run.ts";
import { asked } from "./run-draft.ts";

const { said } = trackside;

/** Where it was, one line for each end that something was said of, then one for the whole run. */
export function describeRun(run: Run): readonly string[] {
  const whole = [
    ...(run.confidence === undefined ? [] : [said.confidence(trackside.confidences[run.confidence])]),
    ...(run.timeSeconds === undefined ? [] : [said.time(formatRunTime(run.timeSeconds))]),
  ];
  return [
    ...(run.section ? [sections.at(sectionName(run.section))] : []),
    ...ends.flatMap((end) => describeEnd(end, run[end])),
    ...(whole.length > 0 ? [`${whole.join(". ")}.`] : []),
  ];
}

function describeEnd(end: End, feedback: EndFeedback): readonly string[] {
  const words = [
    ...feltWords(feedback),
    ...(feedback.noticed ?? []).map((word) => trackside.noticed[word]),
    ...(feedback.bottomOuts === undefined
      ? []
      : [feedback.bottomOuts === 0 ? said.neverBottomed : said.bottomOuts(feedback.bottomOuts)]),
    ...(feedback.sag ? [said.sag(formatQuantity(feedback.sag))] : []),
    ...(feedback.travelUsed ? [said.travelUsed(formatQuantity(feedback.travelUsed))] : []),
  ];
  return words.length > 0 ? [`${trackside.ends[end]}: ${words.join(", ")}.`] : [];
}

/** In short where everything was answered: then what is not named was said to be good. */
function feltWords(feedback: EndFeedback): readonly string[] {
  const isComplete = asked.every((feeling) => feedback[feeling] !== undefined);
  const words = asked.flatMap((feeling) => {
    const answer = feedback[feeling];
    if (answer === undefined || (isComplete && answer === "good")) return [];
    const catalogue: Readonly<Record<string, string>> = trackside.feelings[feeling];
    return [`${said[feeling]} ${catalogue[answer] ?? answer}`];
  });
  if (!isComplete || words.length === asked.length) return words;
  return words.length === 0 ? [said.allGood] : [...words, said.restGood];
}
