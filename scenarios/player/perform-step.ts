import type { Step } from "#scenarios/schema/step.ts";
import type { ActResult, Desk } from "./acts/act.ts";
import { approveBaseline, enterConditions, enterCourse } from "./acts/plan-acts.ts";
import { leaveAsItIs, logRun, takeAdjustment } from "./acts/run-acts.ts";
import { changeOnTheHill, confirmReported, resolveDispute, setByHand, undoLast } from "./acts/setting-acts.ts";
import { followSheet } from "./acts/sheet-acts.ts";
import type { Network } from "./network.ts";

/** Does one step on its device, as that device knows the world at that moment. */
export function performStep(desk: Desk, network: Network, step: Step): ActResult {
  switch (step.do) {
    case "enter course":
      return enterCourse(desk, step);
    case "enter conditions":
      return enterConditions(desk, step);
    case "put on the bike":
    case "back to weekend setup":
    case "back to baseline":
      return followSheet(desk, step);
    case "log a run":
      return logRun(desk, step);
    case "take an adjustment":
      return takeAdjustment(desk, step);
    case "leave as it is":
      return leaveAsItIs(desk, step);
    case "set by hand":
      return setByHand(desk, step);
    case "change on the hill":
      return changeOnTheHill(desk, step);
    case "confirm":
      return confirmReported(desk, step);
    case "undo":
      return undoLast(desk, step);
    case "resolve dispute":
      return resolveDispute(desk, step);
    case "approve baseline":
      return approveBaseline(desk, step);
    case "cut network":
      network.cut(step.device);
      return { ok: true };
    case "reconnect":
      network.reconnect(step.device);
      return { ok: true };
  }
}
