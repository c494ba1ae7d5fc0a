/** Sets of records that a ledger accepts and that a faulty or hostile device could send, around one plausible team. */
import fc from "fast-check";
import { causeSchema } from "#core/ledger/cause.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { adjusterPaths } from "#core/team/adjuster.ts";
import { documentForRecord } from "#core/weekend/documents.ts";
import { baseline, riderBike, setupValues } from "./bike.ts";
import { hostileValue, recordIdOf } from "./hostile-value.ts";

type Kind = (typeof allKinds)[number];

const { rider, bike, parts } = riderBike();
const place = { temperature: { value: 20, unit: "°C" }, altitude: { value: 300, unit: "m" } } as const;
const run = {
  bike: "alder-1",
  weekend: "kestrel",
  session: "p1",
  setup: Array.from({ length: 40 }, (_, n) => recordIdOf(n)),
  front: {
    sag: { value: 36, unit: "mm" },
    travelUsed: { value: 170, unit: "mm" },
    bottomOuts: 3,
    start: "harsh",
    end: "hits hard",
  },
  rear: {
    sag: { value: 21, unit: "mm" },
    travelUsed: { value: 50, unit: "mm" },
    middle: "dives",
    returnSpeed: "too slow",
  },
  confidence: "low",
  section: { id: "rocks", name: "Rock garden", from: 300, to: 420 },
};

/** For each kind the keys and samples of a plausible team; all of them are records of every hostile team. */
const plausible: Readonly<Record<string, readonly (readonly [key: string, sample: unknown])[]>> = {
  member: [["mia", { name: "Mia", role: "mechanic" }]],
  rider: [["alder", { ...rider, style: "usual" }]],
  bike: [
    ["alder-1", bike],
    ["alder-2", { ...bike, name: "Alder two", parts: { ...bike.parts, fork: "fork-2" } }],
  ],
  part: [
    ["fork-1", parts.fork],
    ["fork-2", parts.fork],
    ["shock-1", parts.shock],
    ["tyre-1", parts["front-tyre"]],
    ["tyre-2", parts["rear-tyre"]],
  ],
  mounting: [
    ["fork-1", { bike: "alder-1", from: "alder-2" }],
    ["fork-2", { from: "alder-1" }],
  ],
  baseline: [
    ["alder/steep", baseline({}, { sag: { fork: { value: 34, unit: "mm" }, shock: { value: 20, unit: "mm" } } })],
    [
      "alder/jumpy",
      baseline({ "fork.secondary-pressure": { value: 120, unit: "psi" } }, { mass: { value: 78, unit: "kg" } }),
    ],
  ],
  "sent-back": [
    [
      "alder/steep",
      {
        weekend: "kestrel",
        bike: "alder-1",
        values: setupValues,
        sag: { fork: { value: 36, unit: "mm" } },
        inForce: [recordIdOf(8)],
        note: "Measure the sag of the shock first.",
      },
    ],
  ],
  venue: [["ridge", { name: "Ridge", altitude: { value: 300, unit: "m" } }]],
  weekend: [["kestrel", { name: "Kestrel", venue: "ridge", startsOn: "2026-05-29" }]],
  course: [
    [
      "kestrel",
      {
        mix: { steep: 0.5, jumpy: 0.3, wet: 0.2 },
        altitude: { value: 300, unit: "m" },
        profile: {
          points: [
            [0, 420],
            [600, 300],
            [1200, 180],
          ],
        },
        sections: [
          { id: "rocks", name: "Rock garden", from: 300, to: 420 },
          { id: "finish", name: "Finish" },
        ],
      },
    ],
  ],
  session: [
    ["kestrel/p1", { name: "P1", purpose: "practice", startsAt: "2026-05-29T10:30" }],
    ["kestrel/race", { name: "Race", purpose: "race", startsAt: "2026-05-30T10:30" }],
  ],
  conditions: [
    ["kestrel/p1", { air: { value: 20, unit: "°C" }, bench: { value: 12, unit: "°C" }, ground: "wet" }],
    ["kestrel/race", { air: { value: 28, unit: "°C" }, ground: "dry" }],
  ],
  setting: Object.entries(setupValues).map(([path, quantity]) => [
    `alder/alder-1/${path}`,
    { quantity, standing: "on the bike", heldAt: place, weekend: "kestrel", session: "p1" },
  ]),
  run: [["alder/r1", run]],
  decision: [["alder/r1", { outcome: "adjusted" }]],
  "no-run": [["alder/kestrel/race", { reason: "did not ride" }]],
  service: [
    [
      "alder/s1",
      {
        bike: "alder-1",
        place: "fork",
        part: "fork-1",
        what: "bath oil",
        hoursBefore: 12,
        settings: setupValues,
        weekend: "kestrel",
        note: "new wipers",
      },
    ],
  ],
  "service-plan": [["team", { weights: { mud: 2.5 }, minutesPerRun: 5, bathOilHours: 40, dueFrom: 0.8 }]],
};

/** Setups at the very limits of their parts, where the least correction is one too many. */
const atTheLimits = [
  baseline({
    "fork.main-pressure": { value: 110, unit: "psi" },
    "fork.secondary-pressure": { value: 115, unit: "psi" },
    "fork.rebound": { value: 0, unit: "clicks" },
    "shock.spring-rate": { value: 120, unit: "N/mm" },
    "front-tyre.tyre-pressure": { value: 12, unit: "psi" },
    "rear-tyre.tyre-pressure": { value: 35, unit: "psi" },
  }),
  baseline({
    "fork.main-pressure": { value: 20, unit: "psi" },
    "fork.rebound": { value: 16, unit: "clicks" },
    "shock.spring-rate": { value: 40, unit: "N/mm" },
    "front-tyre.tyre-pressure": { value: 35, unit: "psi" },
    "rear-tyre.tyre-pressure": { value: 12, unit: "psi" },
  }),
];

/** How many records a plausible team has. */
const OWN = Object.values(plausible).flat().length;

const strangeKeys: readonly string[] = [
  ...["constructor", "__proto__", "a/b", "..", "../team", "~", ".", "alder/", "alder/constructor", "alder/__proto__"],
  ...["alder/wet", "alder/r2", "kestrel/constructor", "kestrel/", "otter", "otter/p1", "birch", "alder/alder-1/"],
  ...[
    "alder/alder-1/constructor",
    "alder/alder-1/__proto__.x",
    "alder/alder-1/toString.rebound",
    "alder/alder-1/fork.x",
  ],
  ...["alder/alder-1/fork.rebound/x", "alder/alder-1/x.fork.rebound", "x".repeat(200)],
  ...adjusterPaths.map((path) => `alder/alder-1/${path}`),
];

const times = [
  "0000-01-01T00:00:00Z",
  "9999-12-31T23:59:59.999Z",
  "2026-05-29T08:00:00Z",
  "2026-05-29T08:00Z",
  "2024-02-29T23:59:59Z",
];

/** The raw records of a hostile team: the plausible ones, bent here and there, and strange ones besides. */
export const hostileRecords: fc.Arbitrary<readonly unknown[]> = fc
  .tuple(
    fc.tuple(
      ...allKinds.flatMap((kind) => samplesOf(kind).map(([key, sample]) => recordOf(kind, fc.constant(key), sample))),
    ),
    fc.array(
      fc.constantFrom(...allKinds).chain((kind) => {
        const samples = samplesOf(kind);
        const keys = fc.oneof(fc.constantFrom(...samples.map(([key]) => key)), fc.constantFrom(...strangeKeys));
        const bent = samples.map(([, sample]) => sample);
        const of = kind.kind === "baseline" ? [...bent, ...atTheLimits, ...atTheLimits] : bent;
        return fc.constantFrom(...of).chain((sample) => recordOf(kind, keys, sample));
      }),
      { maxLength: 12 },
    ),
  )
  .map(([own, strange]) => [...own, ...strange].map((record, n) => ({ ...record, id: recordIdOf(n) })));

/** A new kind needs a sample here, so that what is derived from its records is attacked too. */
function samplesOf({ kind }: Kind): readonly (readonly [key: string, sample: unknown])[] {
  const samples = plausible[kind];
  if (samples === undefined) throw new Error(`The plausible team has no record of the kind "${kind}".`);
  return samples;
}

function recordOf(kind: Kind, keys: fc.Arbitrary<string>, sample: unknown): fc.Arbitrary<object> {
  const content = fc.oneof(
    { weight: 100, arbitrary: hostileValue(kind.schema, sample).map((value) => ({ value })) },
    { weight: 1, arbitrary: fc.constant({ voided: { reason: "a mistake" } }) },
  );
  // Most writers have all that was written before in view; the ids of other subjects do nothing.
  const ids = fc.oneof(
    { weight: 3, arbitrary: fc.constant(Array.from({ length: OWN }, (_, n) => recordIdOf(n))) },
    { weight: 1, arbitrary: fc.array(fc.nat({ max: OWN + 12 }).map(recordIdOf), { maxLength: 4 }) },
  );
  const cause = fc.option(hostileValue(causeSchema), { nil: undefined });
  return fc.record({ key: keys, content, at: fc.constantFrom(...times), supersedes: ids, cause }).map((drawn) => ({
    version: 1,
    subject: `${kind.kind}:${drawn.key}`,
    ...drawn.content,
    supersedes: drawn.supersedes,
    by: "mia",
    device: "laptop",
    at: drawn.at,
    ...(drawn.cause === undefined ? {} : { cause: drawn.cause }),
  }));
}

/** The ledger that holds them, each in the document where its subject belongs if it belongs in any. */
export function ledgerOf(raws: readonly unknown[]): Ledger {
  const ledger = createLedger(createKindRegistry([...allKinds]));
  for (const raw of raws) ledger.add(raw, documentOf((raw as { subject: string }).subject));
  return ledger;
}

function documentOf(subject: string): string {
  const colon = subject.indexOf(":");
  const kind = allKinds.find((candidate) => candidate.kind === subject.slice(0, colon));
  if (kind === undefined || kind.scope === "team") return "team";
  try {
    return documentForRecord(kind, subject.slice(colon + 1), 2026);
  } catch {
    return "rider/alder/2026";
  }
}
