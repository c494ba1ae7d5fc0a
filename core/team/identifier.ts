/** Identifiers of the team's things: short words or ULIDs, safe in a subject's key. */
import * as z from "zod/mini";

const identifier = /^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/;

/** True for a text that {@link identifierSchema} accepts. */
export function isIdentifier(text: string): boolean {
  return identifier.test(text);
}

/** One segment of a key: letters, digits, hyphen, underscore; 1 to 64 characters. */
export const identifierSchema = z.string().check(
  z.regex(identifier, {
    error: "an identifier has 1 to 64 letters, digits, - or _, and begins with a letter or digit",
  }),
);

/** A name that people read: 1 to 80 characters, no line breaks. */
export const nameSchema = z
  .string()
  .check(z.regex(/^[^\n\r]{1,80}$/, { error: "a name has 1 to 80 characters in one line" }));
