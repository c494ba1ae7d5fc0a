/** What the keys of a kind look like: which things a record may speak of at all. */
import { isIdentifier } from "./identifier.ts";

/** One segment of a key: what it names, and which texts do. */
export interface KeySegment {
  readonly name: string;
  accepts(text: string): boolean;
}

/** A segment that names one of the team's things. */
export function identifierOf(name: string): KeySegment {
  return { name, accepts: isIdentifier };
}

/** The judge of keys made of these segments, joined by `/`: what is wrong with a key, undefined when nothing is. */
export function keyForm(...segments: readonly KeySegment[]): (key: string) => string | undefined {
  const form = segments.map(({ name }) => name).join("/");
  return (key) => {
    const texts = key.split("/");
    const fits = texts.length === segments.length && segments.every(({ accepts }, at) => accepts(texts[at] ?? ""));
    return fits ? undefined : `the key "${key}" is not of the form ${form}`;
  };
}
