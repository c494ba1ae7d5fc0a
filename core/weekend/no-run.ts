/** That no run of a session is to be expected of a rider, so that nobody waits for it. */
import * as z from "zod/mini";

export const noRunReasons = ["nothing to report", "did not ride"] as const;
export type NoRunReason = (typeof noRunReasons)[number];

export const noRunSchema = z.object({ reason: z.enum(noRunReasons) });
