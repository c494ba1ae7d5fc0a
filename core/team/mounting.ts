/**
 * Where a part is, since it was moved. A bike's own data say which parts it was entered with; once a part was moved, its
 * latest mounting says where it is, and nothing else does.
 */
import * as z from "zod/mini";
import { identifierSchema } from "./identifier.ts";

/** `bike`: the bike that it is on, absent while it is kept on none. `from`: the bike that it was taken from. */
export const mountingSchema = z.object({
  bike: z.optional(identifierSchema),
  from: z.optional(identifierSchema),
});
export type Mounting = z.infer<typeof mountingSchema>;
