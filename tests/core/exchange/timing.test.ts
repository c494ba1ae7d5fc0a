import { describe, expect, test } from "vitest";
import { preview } from "#core/exchange/preview.ts";
import { describeRowRefusal } from "#core/exchange/row-refusal.ts";
import { guessMapping } from "#core/exchange/timing/column-mapping.ts";
import { matchRider } from "#core/exchange/timing/match-rider.ts";
import { timeCandidates } from "#core/exchange/timing/time-candidates.ts";
import { parseTimingTime } from "#core/exchange/timing/timing-time.ts";
import { riderBikes } from "#core/team/roster.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import type { Run } from "#core/weekend/run.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { refusedInWords, takeIn } from "./exchange-team.ts";

const run: Run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: { end: "never reached" }, rear: {} };
const NAME = riderBikes(teamLedger().ledger)[0]?.rider.name ?? "";

function log(team: TeamLedger, id: string, more: Partial<Run> = {}): void {
  written(team.writerFor("mia").set(runKind, `alder/${id}`, { ...run, ...more }));
}

function times(team: TeamLedger, ...cells: readonly string[]) {
  const rows = cells.map((time, at) => ({ line: at + 2, cells: [NAME, time] }));
  return preview(
    team.ledger,
    timeCandidates(team.ledger, rows, { name: 0, time: 1 }, { weekendId: "kestrel", sessionId: "p1" }),
  );
}

const runsOf = ({ ledger }: TeamLedger) => loggedRuns(ledger, "kestrel", "alder").map((logged) => logged.run);

describe("a time in a cell", () => {
  test.each([
    ["1:23.456", 83.456],
    ["1:23,456", 83.456],
    ["01:23.4", 83.4],
    ["00:01:23.456", 83.456],
    ["83.456", 83.456],
    ["83,456", 83.456],
    ["83", 83],
    ["83.4 s", 83.4],
    ["1'23\"456", 83.456],
    ["1′23″456", 83.456],
    ["3:45", 225],
    ["60:00", 3600],
    [" 3:45.2 ", 225.2],
  ])("%s is %d s", (text, seconds) => {
    expect(parseTimingTime(text)).toBe(seconds);
  });

  test.each([
    "",
    "DNF",
    "1:60.0",
    "1:2.3",
    "0:00.000",
    "60:00.001",
    "1:02:03.4",
    "-83.4",
    "83.4567",
    "1e3",
    "1:23:456",
  ])("%s is no time of a run", (text) => {
    expect(parseTimingTime(text)).toBeUndefined();
  });
});

describe("the columns of a table", () => {
  test.each([
    [["Pos", "Plate", "Rider", "Run time"], { plate: 1, name: 2, time: 3 }],
    [["No.", "Surname", "Session", "Time"], { plate: 0, name: 1, session: 2, time: 3 }],
    [["a", "b"], {}],
  ])("are guessed from %j", (head, mapping) => {
    expect(guessMapping(head)).toEqual(mapping);
  });
});

describe("the rider of a line", () => {
  const [alder] = riderBikes(teamLedger().ledger);
  if (!alder) throw new Error("The team has no rider.");
  const named = (name: string, plate: number) => ({ ...alder, riderId: name, rider: { ...alder.rider, name, plate } });
  const riders = [named("Rowan Alder", 11), named("Zoë Linden", 12), named("Kim Linden", 13)];
  test.each([
    ["11", "", "Rowan Alder"],
    ["#011", "ALDER R.", "Rowan Alder"],
    ["", "alder, rowan", "Rowan Alder"],
    ["99", "Zoe Linden", "Zoë Linden"],
  ])("plate %j and name %j are %s", (plate, name, id) => {
    const match = matchRider(riders, plate, name);
    expect(match.ok && match.mounted.riderId).toBe(id);
  });
  test.each([
    ["11", "Bo Hazel", 'Plate 11 is Rowan Alder here, and the file says "Bo Hazel".'],
    ["99", "Bo Hazel", "Nobody of the team fits: plate 99, Bo Hazel."],
    ["", "Linden", "More than one rider of the team fits: Linden."],
    ["", "", "Nobody of the team fits: no plate and no name."],
  ])("plate %j and name %j are refused", (plate, name, sentence) => {
    const match = matchRider(riders, plate, name);
    expect(match.ok ? "" : describeRowRefusal(match.refusal)).toBe(sentence);
  });
});

describe("times taken in", () => {
  test("go to the runs without a time in their order, and keep all that the rider said", () => {
    const team = teamLedger();
    log(team, "run-b");
    log(team, "run-a", { rear: { grip: "good" } as Run["rear"] });
    takeIn(team.writerFor("mia"), times(team, "3:45.213", "3:44.100", "3:43.000"));
    expect(runsOf(team)).toEqual([
      { ...run, front: {}, timeSeconds: 223 },
      { ...run, rear: { grip: "good" }, timeSeconds: 224.1 },
      { ...run, timeSeconds: 225.213 },
    ]);
  });

  test("change nothing when the same file comes once more", () => {
    const team = teamLedger();
    log(team, "run-a");
    takeIn(team.writerFor("mia"), times(team, "3:45.213", "3:45.213", "3:44.1"));
    const again = times(team, "3:45.213", "3:45.213", "3:44.1");
    expect([again.lines, again.same, again.refused]).toEqual([[], 3, []]);
    expect(runsOf(team)).toHaveLength(3);
  });

  test("leave a time that the rider typed shorter, and one that is another's", () => {
    const team = teamLedger();
    log(team, "run-a", { timeSeconds: 225 });
    log(team, "run-b", { timeSeconds: 230.5 });
    const seen = times(team, "3:45.713");
    expect([seen.lines, seen.same]).toEqual([[], 1]);
    expect(times(team, "3:52.0").lines.map(({ state }) => state)).toEqual(["new"]);
  });

  test("are the same runs on two devices that take one file in apart", () => {
    const keys = [teamLedger(), teamLedger()].map((team) =>
      times(team, "3:45.213").lines.map(({ entry }) => entry.key),
    );
    expect(keys[0]).toEqual(keys[1]);
  });

  test("name bad times and sessions that are not there", () => {
    const team = teamLedger();
    expect(refusedInWords(times(team, "DNF"))).toEqual([
      { place: `Line 2, ${NAME}`, sentence: expect.stringMatching(/^"DNF" is no time of a run; allowed is 1:23\.456/) },
    ]);
    const rows = [{ line: 2, cells: [NAME, "3:45", "Heat 7"] }];
    const read = timeCandidates(
      team.ledger,
      rows,
      { name: 0, time: 1, session: 2 },
      { weekendId: "kestrel", sessionId: "p1" },
    );
    expect(refusedInWords(read)).toEqual([
      { place: `Line 2, ${NAME}`, sentence: 'There is no session "Heat 7" in this weekend; there are p1, race.' },
    ]);
  });

  test("are refused while a run of that session is disputed", () => {
    const team = teamLedger();
    log(team, "run-a");
    const [head] = team.ledger.heads(runKind, "alder/run-a");
    const apart = { ...head, id: "02000000000000000000000001", value: { ...run, timeSeconds: 99 } };
    const other = { ...head, id: "02000000000000000000000002", value: { ...run, timeSeconds: 98 } };
    for (const record of [apart, other]) team.ledger.add({ ...record, supersedes: [head?.id] }, "rider/alder/2026");
    expect(refusedInWords(times(team, "3:45.2"))).toEqual([
      { place: `Line 2, ${NAME}`, sentence: expect.stringMatching(/^A run of this rider in this session is disputed/) },
    ]);
  });
});
