/** Where something stands in a file, as facts and in English. */

export type FilePlace =
  /** Lines of a table, counted from 1 with the head row, as a spreadsheet shows them. */
  | {
      readonly type: "line";
      readonly first: number;
      readonly last: number;
      /** Of what the lines speak: a key or adjuster as the file has it, or a person's name. */
      readonly of?: { readonly type: "rider" | "baseline" | "adjuster" | "person"; readonly name: string };
    }
  /** A value of a team's file; without a key all values of that kind. */
  | { readonly type: "value"; readonly kind: string; readonly key?: string };

/** Longest name of a file's own that is told. */
const longest = 80;

/** The place of a value; names that a file has made up are cut. */
export function valuePlace(kind: string, key?: string): FilePlace {
  const place = { type: "value", kind: kind.slice(0, longest) } as const;
  return key === undefined ? place : { ...place, key: key.slice(0, longest) };
}

/** For a person: `Line 7`, `Line 3 to 9, baseline alder/steep`, `rider "alder"`. */
export function describeFilePlace(place: FilePlace): string {
  if (place.type === "value") return place.key === undefined ? `"${place.kind}"` : `${place.kind} "${place.key}"`;
  const { first, last, of } = place;
  const lines = first === last ? `Line ${first}` : `Line ${first} to ${last}`;
  switch (of?.type) {
    case undefined:
      return lines;
    case "rider":
      return `${lines}, rider "${of?.name}"`;
    case "baseline":
      return `${lines}, baseline ${of?.name}`;
    case "adjuster":
    case "person":
      return `${lines}, ${of?.name}`;
  }
}
