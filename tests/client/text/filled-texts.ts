/** The texts of a catalogue, and what they say when something is filled in. */

import { ends, places } from "#core/team/place.ts";
import { tradeOccasions } from "./trade-occasions.ts";

type Words = (...facts: readonly unknown[]) => unknown;
export type Text = string | Words;

/** Every text of a catalogue by its path: "pit.board.title", "pit.bench.cautions.0". */
export function textsOf(words: unknown, path = ""): ReadonlyMap<string, Text> {
  if (typeof words === "string") return new Map([[path, words]]);
  if (typeof words === "function") return new Map([[path, words as Words]]);
  return new Map(
    Object.entries(words as object).flatMap(([name, part]) => [
      ...textsOf(part, path === "" ? name : `${path}.${name}`),
    ]),
  );
}

/** One way to fill a text's facts. Markers are facts that can be found again in what the text says. */
interface Filling {
  readonly name: string;
  readonly fact: (place: number) => unknown;
}

const fillings: readonly Filling[] = [
  { name: "words", fact: (place) => `‹${place}›` },
  { name: "numbers", fact: (place) => 7100 + place },
  { name: "zeros", fact: () => 0 },
  { name: "ones", fact: () => 1 },
  { name: "twos", fact: () => 2 },
  { name: "nothing", fact: () => undefined },
  { name: "named facts", fact: (place) => namedFacts((name) => `‹${place}.${name.toLowerCase()}›`) },
  { name: "named facts without values", fact: () => namedFacts(() => undefined) },
];

/** Texts whose first fact is a place on a bike. */
const textsOfPlaces = [
  "spareBike.part",
  "spareBike.disputes.title",
  "spareBike.disputes.line",
  "spareBike.differences.noPart",
  "spareBike.differences.names",
  "spareBike.differences.archetypes",
  "spareBike.differences.ofPlace",
  "spareBike.move.problems.placeInDispute",
] as const;

/** Texts with a fact from a closed list that English writes as it stands: no fact that is made up may take its place. */
const occasionsAlone: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  "weekendReport.outcome.complaints": ends.flatMap((end) =>
    ["‹0›", undefined].flatMap((before) => ["‹1›", undefined].map((after) => [end, { before, after }])),
  ),
};

/** Facts that no filling can guess, since they are read by their names or from a closed list. */
const occasions: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  ...tradeOccasions,
  ...Object.fromEntries(textsOfPlaces.map((path) => [path, places.map((place) => [place, "‹1›", "‹2›"])])),
  "courseProfile.chart.described": [[], ["‹3›", "‹4›"]].map((steep) => ["‹0›", "‹1›", "‹2›", steep]),
  ...occasionsAlone,
  "common.holding.sentence": [true, false].flatMap((here) =>
    [true, false].flatMap((server) => [undefined, "‹0›"].map((holders) => [{ here, server, with: holders }])),
  ),
};

/** Texts that say nothing in any language: on paper, what a state of a row has to say is said by its value. */
export const silentTexts: readonly string[] = ["print.states.to set", "print.states.set", "print.states.no value"];

export interface Said {
  /** How the facts were filled in: "words", "ones", "occasion 3". */
  readonly filling: string;
  /** What the text says; undefined where it says nothing of such facts, or cannot be filled so. */
  readonly text: string | undefined;
}

/** What a text says under every filling, one for each sentence where it says several by name. */
export function sayings(path: string, text: Text): readonly Said[] {
  if (typeof text === "string") return [{ filling: "no facts", text }];
  const guesses = path in occasionsAlone ? [] : fillings;
  return [
    ...guesses.flatMap(({ name, fact }) => say(name, text, [0, 1, 2, 3, 4, 5].map(fact))),
    ...(occasions[path] ?? []).flatMap((facts, at) => say(`occasion ${at}`, text, facts)),
  ];
}

/** The markers in what a text says, each once. */
export function markersIn(text: string): readonly string[] {
  return [...new Set(text.match(MARKER))];
}

/** What a text says of itself: "…" where something was filled in. */
export function unfilled(text: string): string {
  return text.replace(MARKER, "…");
}

const MARKER = /‹\d(?:\.\w+)?›|\b710\d\b/g;

function say(filling: string, text: Words, facts: readonly unknown[]): readonly Said[] {
  const said = answer(text, facts);
  if (typeof said !== "object" || said === null) return [{ filling, text: worded(said) }];
  return Object.entries(said)
    .filter(([name]) => !codes.includes(name))
    .flatMap(([name, part]) =>
      [part].flat().map((words, at) => ({ filling: `${filling}, ${name} ${at}`, text: worded(words) })),
    );
}

/** What stands beside a rule's words without being one of them. */
const codes: readonly string[] = ["id", "provenance"];

function answer(text: Words, facts: readonly unknown[]): unknown {
  try {
    return text(...facts);
  } catch (error) {
    // A fact of another kind than the text takes, such as a number that it would lowercase.
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}

function worded(said: unknown): string | undefined {
  return typeof said === "string" && said.trim() !== "" && !/undefined|NaN/.test(said) ? said : undefined;
}

function namedFacts(fact: (name: string) => string | undefined): object {
  return new Proxy({}, { get: (_, name) => (typeof name === "string" ? fact(name) : undefined) });
}
