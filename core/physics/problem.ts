/**
 * What this room says when it cannot answer. Input that no spring, gas or tyre
 * can have throws a {@link PhysicsError}; a question whose honest answer is
 * "that cannot be" returns a {@link Possible} that says why.
 */

/** The closed list of faults of input. */
export const physicsProblems = [
  "not a number",
  "not positive",
  "negative",
  "out of range",
  "beyond stroke",
  "chamber overfull",
  "secondary not above main",
  "secondary chamber missing",
  "points out of order",
  "leverage does not fit stroke",
  "too few measurements",
] as const;
export type PhysicsProblem = (typeof physicsProblems)[number];

/** Numbers (SI units) behind a problem, by the name of the input. */
export type PhysicsFacts = Readonly<Record<string, number>>;

/** Invalid input: `message` is a sentence for a person, `type` and `facts` are for a program. */
export class PhysicsError extends Error {
  override readonly name = "PhysicsError";
  readonly type: PhysicsProblem;
  readonly facts: PhysicsFacts;

  constructor(type: PhysicsProblem, sentence: string, facts: PhysicsFacts) {
    super(sentence);
    this.type = type;
    this.facts = facts;
  }
}

/** The closed list of reasons why something cannot be. */
export const impossibilities = [
  "tops out",
  "bottoms out",
  "beyond low end",
  "beyond high end",
  "no share between none and all",
  "above marked maximum",
  "below ambient pressure",
  "measurements do not tell",
] as const;
export type Impossibility = (typeof impossibilities)[number];

/** A value, or the reason why there is none. */
export type Possible<T> =
  | { readonly possible: true; readonly value: T }
  | { readonly possible: false; readonly reason: Impossibility };

/** The value that there is. */
export const possible = <T>(value: T): Possible<T> => ({ possible: true, value });
/** The reason why there is none. */
export const notPossible = (reason: Impossibility): Possible<never> => ({ possible: false, reason });
