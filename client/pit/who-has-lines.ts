/** Who has what is on a rider's bike, and who has not, in a sentence each. */
import { whoHas } from "#client/text/who-has.ts";
import type { SetupHolder, SetupHolding } from "#core/planning/who-has.ts";

export interface WhoHasLines {
  /** Absent when nobody has all of it. */
  readonly all: string | undefined;
  /** Absent when everybody has all of it. */
  readonly notYet: string | undefined;
}

/** @returns undefined while nothing is on the bike or nobody is in the team. */
export function whoHasLines(holding: SetupHolding | undefined): WhoHasLines | undefined {
  if (!holding || holding.settings === 0 || holding.holders.length === 0) return undefined;
  const { settings, holders } = holding;
  const name = ({ member, missing }: SetupHolder): string =>
    missing === 0 || missing === settings ? member.name : whoHas.part(member.name, missing, settings);
  const namesWhere = (test: (holder: SetupHolder) => boolean): string => holders.filter(test).map(name).join(", ");
  const all = namesWhere(({ missing }) => missing === 0);
  const notYet = namesWhere(({ missing }) => missing > 0);
  return {
    all: all === "" ? undefined : whoHas.all(all),
    notYet: notYet === "" ? undefined : whoHas.notYet(notYet),
  };
}
