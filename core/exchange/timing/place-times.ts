/** To which runs of one rider in one session the times of a file belong. */
import type { Refused } from "#core/exchange/candidate.ts";
import type { FilePlace } from "#core/exchange/file-place.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import type { Run } from "#core/weekend/run.ts";

export interface TimedOccasion {
  readonly mounted: RiderBike;
  readonly weekendId: string;
  readonly sessionId: string;
}

/** A time in seconds, to the thousandth, and where it stands in the file. */
export interface ReadTime {
  readonly place: FilePlace;
  readonly seconds: number;
}

export interface PlacedTimes {
  /** One for each time: the run as it will be, or as it is where it has the time already. */
  readonly runs: readonly { readonly place: FilePlace; readonly key: string; readonly run: Run }[];
  readonly refused: readonly Refused[];
}

/**
 * Gives each time its run. A run that has the time already, or the time as a person would write it shorter, keeps what
 * it has. The others go in order to the runs without a time, the earliest first; what is left makes runs of its own,
 * under keys that follow from the time, so that two devices which take in one file apart make the same run.
 */
export function placeTimes(ledger: Ledger, occasion: TimedOccasion, times: readonly ReadTime[]): PlacedTimes {
  const known = runsOf(ledger, occasion);
  if (known === "disputed") {
    return { runs: [], refused: times.map(({ place }) => ({ place, refusal: { type: "disputed run" } })) };
  }
  const free = [...known];
  const placed = new Map<ReadTime, { readonly key: string; readonly run: Run }>();
  for (const agrees of [isSameTime, isShortenedTime]) {
    for (const time of times) {
      if (placed.has(time)) continue;
      const at = free.findIndex(({ run }) => run.timeSeconds !== undefined && agrees(run.timeSeconds, time.seconds));
      const [found] = at < 0 ? [] : free.splice(at, 1);
      if (found) placed.set(time, found);
    }
  }
  const untimed = free.filter(({ run }) => run.timeSeconds === undefined);
  for (const time of times) {
    if (placed.has(time)) continue;
    const run = untimed.shift();
    if (run) placed.set(time, { key: run.key, run: { ...run.run, timeSeconds: time.seconds } });
    else placed.set(time, newRun(ledger, occasion, time.seconds, new Set([...placed.values()].map(({ key }) => key))));
  }
  return {
    runs: times.flatMap((time) => {
      const run = placed.get(time);
      return run ? [{ ...run, place: time.place }] : [];
    }),
    refused: [],
  };
}

function runsOf(
  ledger: Ledger,
  { mounted, weekendId, sessionId }: TimedOccasion,
): readonly { readonly key: string; readonly run: Run }[] | "disputed" {
  const isHere = (run: Run | undefined): boolean => run?.weekend === weekendId && run.session === sessionId;
  const runs: { readonly key: string; readonly run: Run; readonly first: string }[] = [];
  for (const key of ledger.keys(runKind, mounted.riderId)) {
    const current = ledger.current(runKind, key);
    if (current.state === "disputed" && current.claims.some(({ value }) => isHere(value))) return "disputed";
    if (current.state !== "settled" || !isHere(current.value)) continue;
    runs.push({ key, run: current.value, first: ledger.history(runKind, key)[0]?.at ?? "" });
  }
  return runs.sort((a, b) => (a.first === b.first ? (a.key < b.key ? -1 : 1) : a.first < b.first ? -1 : 1));
}

function newRun(
  ledger: Ledger,
  { mounted, weekendId, sessionId }: TimedOccasion,
  seconds: number,
  taken: ReadonlySet<string>,
): { readonly key: string; readonly run: Run } {
  const name = `timed-${shortHash(`${weekendId}/${sessionId}`)}-${Math.round(seconds * 1000)}`;
  const isTaken = (key: string): boolean => taken.has(key) || ledger.current(runKind, key).state !== "absent";
  let key = `${mounted.riderId}/${name}`;
  for (let count = 2; isTaken(key); count += 1) key = `${mounted.riderId}/${name}-${count}`;
  const run: Run = {
    bike: mounted.bikeId,
    weekend: weekendId,
    session: sessionId,
    timeSeconds: seconds,
    front: {},
    rear: {},
  };
  return { key, run };
}

function isSameTime(has: number, seconds: number): boolean {
  return Math.abs(has - seconds) < 0.0005;
}

/** 225 or 225.2 for 225.213: cut off or rounded where the person stopped writing. */
function isShortenedTime(has: number, seconds: number): boolean {
  const decimals = String(has).split(".")[1]?.length ?? 0;
  const lastPlace = 10 ** -decimals;
  return decimals < 3 && seconds > has - lastPlace / 2 - 1e-9 && seconds < has + lastPlace - 1e-9;
}

/** FNV-1a, 32 bits (isthe.com/chongo/tech/comp/fnv), in base 36: short, and the same on every device. */
function shortHash(text: string): string {
  let hash = 0x811c9dc5;
  for (const character of text) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash.toString(36);
}
