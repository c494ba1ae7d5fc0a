/** Where a weekend is held. */
import * as z from "zod/mini";
import { nameSchema } from "#core/team/identifier.ts";
import { altitudeSchema } from "#core/team/surroundings.ts";

/** `altitude` is that of the course's middle: the ambient pressure that the springs work against. */
export const venueSchema = z.object({ name: nameSchema, altitude: altitudeSchema });
export type Venue = z.infer<typeof venueSchema>;
