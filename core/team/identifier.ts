/** Identifiers of the team's things: short words or ULIDs, safe in a subject's key. */
import * as z from "zod/mini";

/** One segment of a key: letters, digits, hyphen, underscore; 1 to 64 characters. */
export const identifierSchema = z.string().check(
  z.regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/, {
    error: "an identifier has 1 to 64 letters, digits, - or _, and begins with a letter or digit",
  }),
);

/** A name that people read: 1 to 80 characters, no line breaks. */
export const nameSchema = z
  .string()
  .check(z.regex(/^[^\n\r]{1,80}$/, { error: "a name has 1 to 80 characters in one line" }));
