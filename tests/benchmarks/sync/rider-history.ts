/** What a season writes about one rider, as the screens write it: settings put on the bike and runs with their feedback. */
import { monotonicFactory } from "ulid";
import type { Cause } from "#core/ledger/cause.ts";
import { type LedgerRecord, subjectOf } from "#core/ledger/record.ts";
import type { TypedQuantity, Unit } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { type EndFeedback, feelings, noticeable, type Run } from "#core/weekend/run.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { Chance } from "#tests/simulation/chance.ts";

/** One rider whose seasons follow each other: each setting supersedes the one before it. */
export type RiderHistory = {
  /** The next records of a season, `changes` settings and `runs` runs, evenly mixed, from a moment on (ms since the epoch). */
  write(from: number, runs: number, changes: number): LedgerRecord[];
};

type Range = { readonly low: number; readonly high: number; readonly unit: Unit };

const ranges: Partial<Record<AdjusterPath, Range>> = {
  "fork.main-pressure": { low: 55, high: 95, unit: "psi" },
  "fork.secondary-pressure": { low: 90, high: 160, unit: "psi" },
  "fork.rebound": { low: 2, high: 14, unit: "clicks" },
  "fork.low-speed-compression": { low: 2, high: 12, unit: "clicks" },
  "fork.high-speed-compression": { low: 1, high: 8, unit: "clicks" },
  "shock.main-pressure": { low: 140, high: 240, unit: "psi" },
  "shock.volume-spacers": { low: 0, high: 5, unit: "spacers" },
  "shock.rebound": { low: 2, high: 14, unit: "clicks" },
  "shock.low-speed-compression": { low: 2, high: 12, unit: "clicks" },
  "front-tyre.tyre-pressure": { low: 18, high: 28, unit: "psi" },
  "rear-tyre.tyre-pressure": { low: 20, high: 32, unit: "psi" },
};
const paths = Object.keys(ranges) as AdjusterPath[];

/** Settings that a mechanic makes in one go between two runs. */
const LARGEST_BATCH = 6;

/** @param rider the rider's id, from which the bike's follows where none is named */
export function createRiderHistory(rider: string, chance: Chance, bike = `${rider}-1`): RiderHistory {
  const newId = monotonicFactory(chance.next);
  const mechanicDevice = newId(0);
  const riderDevice = newId(0);
  const current = new Map<AdjusterPath, string>();
  let now = 0;

  const later = (lowest: number, highest: number): number => {
    now += chance.whole(lowest * 1000, highest * 1000);
    return now;
  };
  const envelope = (by: string, device: string, subject: LedgerRecord["subject"]) =>
    ({ version: 1, id: newId(now), subject, by, device, at: new Date(now).toISOString() }) as const;
  const place = () => ({ weekend: `weekend-${new Date(now).getUTCMonth() + 1}`, session: chance.one(sessions) });

  function setting(path: AdjusterPath, batch: string, cause: Cause): LedgerRecord<Setting> {
    const { low, high, unit } = ranges[path] ?? { low: 0, high: 1, unit: "clicks" };
    const quantity: TypedQuantity = { value: chance.whole(low, high), unit };
    const temperature = { value: chance.whole(8, 30), unit: "°C" } as const;
    const before = current.get(path);
    const record = {
      ...envelope("kim-larch", mechanicDevice, subjectOf(settingKind.kind, `${rider}/${bike}/${path}`)),
      value: {
        quantity,
        standing: "on the bike",
        ...place(),
        ...(unit === "psi" && { heldAt: { temperature, altitude: { value: 1500, unit: "m" } } }),
      } satisfies Setting,
      supersedes: before === undefined ? [] : [before],
      batch,
      cause,
    };
    current.set(path, record.id);
    return record;
  }

  function run(): LedgerRecord<Run> {
    later(300, 900);
    return {
      ...envelope(rider, riderDevice, subjectOf(runKind.kind, `${rider}/${newId(now)}`)),
      value: {
        bike,
        ...place(),
        setup: [...current.values()],
        timeSeconds: chance.whole(15_000, 24_000) / 100,
        front: feedback("front", chance),
        rear: feedback("rear", chance),
        confidence: chance.one(["low", "fair", "high"]),
        ...(chance.happens(0.3) && { note: chance.one(notes) }),
      },
      supersedes: [],
    };
  }

  function batchOf(size: number, lastRun: string | undefined): LedgerRecord[] {
    later(60, 240);
    const batch = newId(now);
    const first = chance.whole(0, paths.length - 1);
    return Array.from({ length: size }, (_, index) => {
      const path = paths[(first + index) % paths.length] ?? "fork.rebound";
      const cause: Cause =
        lastRun !== undefined && chance.happens(0.5)
          ? { type: "advice", rule: chance.one(rules), run: lastRun }
          : { type: "by hand", ...(lastRun !== undefined && { run: lastRun }) };
      return setting(path, batch, cause);
    });
  }

  return {
    write(from, runs, changes) {
      now = from;
      const records: LedgerRecord[] = [];
      let changed = 0;
      let lastRun: string | undefined;
      for (let count = 1; count <= Math.max(runs, 1); count += 1) {
        const due = Math.round((changes * count) / Math.max(runs, 1));
        while (changed < due) {
          const size = Math.min(chance.whole(1, LARGEST_BATCH), due - changed);
          records.push(...batchOf(size, lastRun));
          changed += size;
        }
        if (count > runs) break;
        const logged = run();
        lastRun = logged.subject.slice(logged.subject.lastIndexOf("/") + 1);
        records.push(logged);
      }
      return records;
    },
  };
}

function feedback(end: "front" | "rear", chance: Chance): EndFeedback {
  return {
    bottomOuts: chance.whole(0, 3),
    travelUsed: { value: chance.whole(40, 60), unit: "mm" },
    start: chance.one(feelings.start),
    middle: chance.one(feelings.middle),
    end: chance.one(feelings.end),
    returnSpeed: chance.one(feelings.returnSpeed),
    grip: chance.one(feelings.grip),
    ...(chance.happens(0.4) && { noticed: [chance.one(noticeable[end])] }),
  };
}

const sessions = ["practice-1", "practice-2", "qualifying", "race"] as const;
const rules = ["fork-end-hits-hard", "shock-too-slow", "fork-harsh-start", "tyre-squirms"] as const;
const notes = [
  "Loses the front in the long left below the wall.",
  "Much calmer in the upper rocks than before lunch.",
  "Hands are fine now; the rear still kicks on the last lip.",
  "Rode the lower half slowly, red flag.",
] as const;
