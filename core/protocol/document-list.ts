import * as z from "zod/mini";

/** Path at which a server lists its documents. */
export const documentListPath = "/documents";

/**
 * The documents of a server's log, each with the number of its newest update in that log. A number means something to
 * its own server alone; another number than last time means that the document has changed.
 */
export const documentListSchema = z.object({
  documents: z.array(
    z.object({
      name: z.string().check(z.minLength(1), z.maxLength(256)),
      position: z.int().check(z.positive()),
    }),
  ),
});

export type DocumentList = z.infer<typeof documentListSchema>;
