import { createRoot } from "solid-js";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createFind, type Finding, MOST_SHOWN } from "#client/find/create-find.ts";
import type { Member } from "#core/team/people.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const key = settingKey("alder", "alder-1", "fork.rebound");

function clicks(value: number) {
  return { quantity: { value, unit: "clicks" as const }, standing: "on the bike" as const, weekend: "kestrel" };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function searching(
  team: TeamLedger,
  role: Member["role"],
  test: (finding: Finding, lookFor: (words: string) => string[]) => void,
) {
  const member: Member = { name: "Kim", role };
  // Effects run when the root is made.
  const { finding, dispose } = createRoot((dispose) => ({
    finding: createFind({ ledger: () => team.ledger, member: () => member }),
    dispose,
  }));
  const lookFor = (words: string): string[] => {
    finding.type(words);
    vi.runAllTimers();
    return (finding.found() ?? []).map(({ title }) => title);
  };
  test(finding, lookFor);
  dispose();
}

describe("Looking for something", () => {
  it("finds changes by rider, adjuster, value and reason, whatever case and accents", () => {
    const team = teamLedger();
    const mia = team.writerFor("mia");
    written(mia.set(settingKind, key, clicks(9), { cause: { type: "by hand", note: "Försiktig på hällarna" } }));
    written(mia.set(settingKind, key, clicks(7), { cause: { type: "own change" } }));
    searching(team, "mechanic", (finding, lookFor) => {
      expect(lookFor("rebound 7")).toHaveLength(1);
      expect(lookFor("FORSIKTIG")).toHaveLength(1);
      expect(lookFor("fork rebound")).toHaveLength(2);
      expect(finding.found()?.[0]?.path).toBe("/pit/rider/alder?weekend=kestrel&view=changelog");
      expect(lookFor("fork zebra")).toEqual([]);
      lookFor("   ");
      expect(finding.found()).toBeUndefined();
    });
  });

  it("finds runs by what was said and noted", () => {
    const team = teamLedger();
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: {}, rear: {}, note: "Chain came off" };
    written(team.writerFor("mia").set(runKind, "alder/r1", { ...run, front: { end: "never reached" } }));
    searching(team, "manager", (finding, lookFor) => {
      expect(lookFor("chain")).toHaveLength(1);
      expect(lookFor("never reached")).toHaveLength(1);
      expect(finding.found()?.[0]?.path).toBe("/review/rider/alder");
    });
  });

  it("finds riders by name before everything that was done for them", () => {
    const team = teamLedger();
    written(team.writerFor("mia").set(settingKind, key, clicks(9)));
    searching(team, "mechanic", (finding, lookFor) => {
      expect(lookFor("alder").length).toBeGreaterThan(1);
      expect(finding.found()?.[0]).toMatchObject({ kind: "Rider", path: "/pit/rider/alder" });
    });
  });

  it("shows the latest of many, and says that it is cut", () => {
    const team = teamLedger();
    const mia = team.writerFor("mia");
    for (let index = 0; index < MOST_SHOWN + 5; index += 1) written(mia.set(settingKind, key, clicks(index % 2)));
    searching(team, "mechanic", (finding, lookFor) => {
      expect(lookFor("rebound")).toHaveLength(MOST_SHOWN);
      expect(finding.isCut()).toBe(true);
      const moments = (finding.found() ?? []).map(({ at }) => at);
      expect(moments).toEqual([...moments].sort().reverse());
    });
  });

  it("finds what has arrived since it was looked for before", () => {
    const team = teamLedger();
    searching(team, "mechanic", (_finding, lookFor) => {
      expect(lookFor("rebound")).toEqual([]);
      written(team.writerFor("mia").set(settingKind, key, clicks(9)));
      expect(lookFor("rebound ")).toHaveLength(1);
    });
  });
});
