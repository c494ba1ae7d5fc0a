/** A race weekend and its sessions. */
import * as z from "zod/mini";
import { identifierSchema, nameSchema } from "#core/team/identifier.ts";

export const raceWeekendSchema = z.object({
  name: nameSchema,
  venue: identifierSchema,
  startsOn: z.iso.date({ error: "a date is written like 2026-05-29" }),
});
export type RaceWeekend = z.infer<typeof raceWeekendSchema>;

export const sessionPurposes = ["practice", "qualifying", "race"] as const;

/** A session of a weekend; `startsAt` is the local wall-clock time at the venue, without a zone. */
export const sessionSchema = z.object({
  name: nameSchema,
  purpose: z.enum(sessionPurposes),
  startsAt: z.iso.datetime({ local: true, error: "a start is written like 2026-05-29T10:30" }),
});
export type Session = z.infer<typeof sessionSchema>;
