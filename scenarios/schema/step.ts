/**
 * What somebody does on one device, as a closed union. `at` is the time in
 * minutes from the scenario's start; what `do` needs stands beside it.
 */
import * as z from "zod/mini";
import { type AdjusterPath, adjusterPaths } from "#core/team/adjuster.ts";
import { setupValuesSchema } from "#core/team/baseline.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { identifierSchema } from "#core/team/identifier.ts";
import { anyQuantitySchema } from "#core/team/quantity-schema.ts";
import { conditionsSchema } from "#core/weekend/conditions.ts";
import { courseSchema } from "#core/weekend/course.ts";
import { runSchema } from "#core/weekend/run.ts";

const adjuster = z.enum(adjusterPaths as [AdjusterPath, ...AdjusterPath[]]);
const note = z.optional(z.string().check(z.maxLength(500)));
const occasion = {
  at: z.number({ error: "not a number of minutes from the start" }).check(z.gte(0), z.lte(20_160)),
  device: identifierSchema,
};
const ofRider = { ...occasion, rider: identifierSchema };
const forSession = { ...ofRider, session: identifierSchema };
const named = { adjusters: z.optional(z.array(adjuster).check(z.minLength(1))) };

const courseStep = z.strictObject({ ...occasion, do: z.literal("enter course"), course: courseSchema });
const conditionsStep = z.strictObject({
  ...occasion,
  do: z.literal("enter conditions"),
  session: identifierSchema,
  conditions: conditionsSchema,
});

/** Sets what the sheet says, in the bench sequence: every row still to set, or the named adjusters. */
const putOnStep = z.strictObject({ ...forSession, ...named, do: z.literal("put on the bike") });
/** Sets what the sheet of the session says again, whatever is on the bike now. */
const backToSheetStep = z.strictObject({ ...forSession, ...named, do: z.literal("back to weekend setup") });
const backToBaselineStep = z.strictObject({ ...forSession, ...named, do: z.literal("back to baseline") });

/** A run with its feedback; bike, weekend and the settings on the bike are filled in from what the device knows. */
const logRunStep = z.strictObject({
  ...forSession,
  do: z.literal("log a run"),
  run: z.omit(runSchema, { bike: true, weekend: true, session: true, setup: true }),
});

/** Of the rider's last run: the first adjustment of the advice, the one at `place` in its order (from 1), or that of `rule`. */
const takeStep = z.strictObject({
  ...ofRider,
  do: z.literal("take an adjustment"),
  rule: z.optional(z.string()),
  place: z.optional(z.int().check(z.positive())),
});
const leaveStep = z.strictObject({ ...ofRider, do: z.literal("leave as it is") });

/** With `answers` it is the mechanic's own answer to the rider's last run. */
const byHandStep = z.strictObject({
  ...forSession,
  do: z.literal("set by hand"),
  values: setupValuesSchema,
  note,
  answers: z.optional(z.literal("last run")),
});
/** The rider's own change on the hill: reported until a mechanic confirms it. */
const ownChangeStep = z.strictObject({ ...forSession, do: z.literal("change on the hill"), values: setupValuesSchema });
const confirmStep = z.strictObject({ ...ofRider, do: z.literal("confirm"), adjuster });

/** Takes back the rider's last change that is still on the bike and was no undo, with what was made together with it. */
const undoStep = z.strictObject({ ...ofRider, do: z.literal("undo"), adjuster: z.optional(adjuster) });

/** `found` is what the bike was seen to have. */
const resolveStep = z.strictObject({
  ...ofRider,
  do: z.literal("resolve dispute"),
  adjuster,
  found: anyQuantitySchema,
});

/** Makes what is on the bike the rider's baseline for `courseType`, at the temperature of `session`. */
const approveStep = z.strictObject({
  ...forSession,
  do: z.literal("approve baseline"),
  courseType: z.enum(courseTypes),
});

const cutStep = z.strictObject({ ...occasion, do: z.literal("cut network") });
const reconnectStep = z.strictObject({ ...occasion, do: z.literal("reconnect") });

export const stepSchema = z.discriminatedUnion("do", [
  courseStep,
  conditionsStep,
  putOnStep,
  backToSheetStep,
  backToBaselineStep,
  logRunStep,
  takeStep,
  leaveStep,
  byHandStep,
  ownChangeStep,
  confirmStep,
  undoStep,
  resolveStep,
  approveStep,
  cutStep,
  reconnectStep,
]);
export type Step = z.infer<typeof stepSchema>;
export type StepOf<Act extends Step["do"]> = Extract<Step, { readonly do: Act }>;
