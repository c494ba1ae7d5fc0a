/** Why something is not handed over or taken in, in the language of the device. */

import type { BundleProblem } from "#client/device/hand-off/bundle.ts";
import type { CodeProblem } from "#client/device/hand-off/codes/collect-codes.ts";
import { handOffProblems as words } from "#client/text/hand-off-problems.ts";

/** Why a bundle is not made, read or merged. */
export function bundleProblemText(problem: BundleProblem): string {
  switch (problem.type) {
    case "foreign":
      return words.foreign;
    case "newer version":
      return words.newerVersion[problem.of];
    case "too large":
      return words.tooLarge[problem.of];
    case "damaged":
      return words.damaged[problem.of];
    case "unknown document":
      return words.unknownDocument[problem.of];
    case "refused document":
      return words.refusedDocument(problem.document, words.reasons[problem.reason]);
    case "another team":
      return words.anotherTeam;
    case "another device":
      return words.anotherDevice;
  }
}

/** Why a code that the camera saw is left out. */
export function codeProblemText(problem: CodeProblem): string {
  switch (problem.type) {
    case "unreadable":
      return words.codes.unreadable[problem.as];
    case "unwanted":
      return words.codes.unwanted[problem.kind];
    case "another hand-off":
      return words.codes.anotherHandOff;
    case "no fit":
      return words.codes.noFit;
  }
}
