/** Acts on the plan: the course, the conditions, and what becomes a baseline. */
import { describeProposalObstacle, proposeBaseline } from "#core/planning/baseline-review.ts";
import { conditionsKind, courseKind } from "#core/weekend/record-kinds.ts";
import type { StepOf } from "#scenarios/schema/step.ts";
import { type ActResult, type Desk, mountedOf, outcomeOf, refused, writeAll } from "./act.ts";
import { groundOf, rideOf } from "./surroundings.ts";

export function enterCourse({ device, weekendId }: Desk, step: StepOf<"enter course">): ActResult {
  return outcomeOf(device.writer.set(courseKind, weekendId, step.course));
}

export function enterConditions({ device, weekendId }: Desk, step: StepOf<"enter conditions">): ActResult {
  return outcomeOf(device.writer.set(conditionsKind, `${weekendId}/${step.session}`, step.conditions));
}

export function approveBaseline(desk: Desk, step: StepOf<"approve baseline">): ActResult {
  const ride = rideOf(desk, step.session);
  if (!ride) return refused(`The course, or the conditions for ${step.session}, are not entered yet.`);
  const mounted = mountedOf(desk, step.rider);
  const proposed = proposeBaseline(
    desk.device.ledger,
    mounted,
    step.courseType,
    desk.weekendId,
    ride,
    groundOf(desk, step.session),
  );
  return proposed.ok
    ? writeAll(desk, [proposed.proposal.entry])
    : refused(proposed.why.map(describeProposalObstacle).join(" "));
}
