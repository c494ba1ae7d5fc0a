import { render } from "solid-js/web";
import { afterEach, beforeEach, describe, expect, it, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { disputeLines } from "#client/pit/dispute-lines.ts";
import { SentBackCards } from "#client/pit/sent-back-cards.tsx";
import { ageInWords } from "#client/review/age-in-words.ts";
import { outlierInWords } from "#client/review/baseline-facts.ts";
import { createApproval } from "#client/review/create-approval.ts";
import type { RiderReview } from "#client/review/create-rider-review.ts";
import { matrixView } from "#client/review/matrix-view.ts";
import { SendBack } from "#client/review/send-back.tsx";
import { sentBackKind } from "#core/team/record-kinds.ts";
import { riderBike } from "#core/team/roster.ts";
import { programme } from "#core/weekend/programme.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { setupValues } from "#tests/builders/bike.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

let team: TeamLedger;
let close: (() => void) | undefined;

beforeEach(() => {
  team = teamLedger();
  for (const [path, quantity] of Object.entries(setupValues)) {
    const value = { quantity, standing: "on the bike" as const, weekend: "kestrel" };
    written(team.writerFor("mia").set(settingKind, `alder/alder-1/${path}`, value));
  }
});

afterEach(() => {
  close?.();
  document.body.replaceChildren();
});

function device(): Device {
  const writer = team.writerFor("heather");
  const parts: Pick<Device, "ledger" | "write" | "revert" | "resolve"> = {
    ledger: () => team.ledger,
    write: (entries, options) => writer.setMany(entries, options),
    revert: (recordId) => writer.revert(recordId),
    resolve: (kind, key, value, options) => writer.resolve(kind, key, value, options),
  };
  return parts as Device;
}

const mounted = () => riderBike(team.ledger, "alder");

function pitCards(): string {
  const bench = document.createElement("main");
  const dispose = render(() => <SentBackCards bench={{ device: device(), mounted }} />, bench);
  const text = bench.textContent ?? "";
  dispose();
  return text;
}

describe("how old a baseline is", () => {
  it.each([
    ["2026-06-19T23:00:00Z", "from today"],
    ["2026-06-18T08:00:00Z", "1 day old"],
    ["2026-06-06T08:00:00Z", "13 days old"],
    ["2026-06-05T08:00:00Z", "2 weeks old"],
    ["2026-05-29T08:00:00Z", "3 weeks old"],
    ["2026-04-19T08:00:00Z", "2 months old"],
    ["2024-06-20T08:00:00Z", "23 months old"],
    ["2024-06-01T08:00:00Z", "2 years old"],
    ["2026-06-20T00:00:00Z", "dated ahead of this device's clock"],
    ["0000-01-01T00:00:00Z", "2026 years old"],
  ])("written %s, it is %s on 19 June 2026", (at, words) => {
    expect(ageInWords(at, "2026-06-19")).toBe(words);
  });
});

describe("the matrix", () => {
  it("says how old each baseline is and how much riding stands behind it", () => {
    const setup = Object.keys(setupValues).map(
      (path) => team.ledger.heads(settingKind, `alder/alder-1/${path}`)[0]?.id ?? "",
    );
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", setup, front: {}, rear: {} };
    written(team.writerFor("mia").set(runKind, "alder/r1", run));
    const [row] = matrixView(team.ledger, "2026-06-19");
    expect(row?.cells.map(({ facts }) => facts)).toEqual([
      "3 weeks old, 1 run on 1 weekend",
      "3 weeks old, no run with these values yet",
      undefined,
    ]);
  });

  it("says what is far from the team mates in words, with both numbers", () => {
    expect(
      outlierInWords({
        ...{ riderId: "alder", type: "wet", path: "fork.main-pressure", riders: 6, side: "high" },
        perKilogram: { value: 1.0625, unit: "psi" },
        median: { value: 0.75123, unit: "psi" },
      }),
    ).toBe(
      "Look at it: high for the rider's mass. Fork, main pressure 1.06 psi a kilogram; the middle of 6 riders is 0.75 psi.",
    );
  });
});

describe("sending a setup back", () => {
  function openForm() {
    const approval = createApproval(device());
    const rider = {
      mounted,
      type: () => "steep",
      plan: () => programme(team.ledger, "kestrel"),
    } as unknown as RiderReview;
    close = render(() => <SendBack ledger={team.ledger} rider={rider} approval={approval} />, document.body);
    const field = document.querySelector("textarea") as HTMLTextAreaElement;
    return {
      approval,
      field,
      send: (note: string) => {
        field.value = note;
        field.dispatchEvent(new InputEvent("input", { bubbles: true }));
        document.querySelector("form")?.dispatchEvent(new SubmitEvent("submit", { bubbles: true, cancelable: true }));
      },
    };
  }

  test("puts the note on the rider's bench, with who wrote it, and empties the form", () => {
    const { approval, field, send } = openForm();
    send("Measure the sag of the shock first.");
    expect(approval.done()).toContain("Sent back");
    expect(field.value).toBe("");
    expect(pitCards()).toContain("Measure the sag of the shock first.");
    expect(pitCards()).toContain("heather");
  });

  test("asks for a note and keeps what was typed", () => {
    const { approval, field, send } = openForm();
    send("  ");
    expect(approval.problem()).toContain("Write what is to be done");
    expect(field.value).toBe("  ");
    expect(pitCards()).toBe("");
  });

  test("can be undone, which takes the note off the bench", () => {
    const { approval, send } = openForm();
    send("Measure the sag.");
    expect(approval.undoLabel()).toContain("take the note back");
    approval.undo()?.();
    expect(approval.done()).toContain("the note was taken back");
    expect(pitCards()).toBe("");
  });

  test("is no open dispute any more once the bike was set differently", () => {
    openForm().send("Soften the fork.");
    const value = team.ledger.heads(sentBackKind, "alder/steep")[0]?.value;
    team.ledger.add(
      {
        ...{ version: 1, id: "02000000000000000000000001", subject: "sent-back:alder/steep", supersedes: [] },
        ...{ by: "lou", device: "tablet", at: "2026-05-29T09:59:00.000Z" },
        value: { ...value, note: "Stiffen the fork." },
      },
      "team",
    );
    expect(disputeLines(team.ledger)).toMatchObject([{ rider: "Alder", path: "/pit/rider/alder" }]);
    const softer = { quantity: { value: 56, unit: "psi" }, standing: "on the bike" } as const;
    written(team.writerFor("mia").set(settingKind, "alder/alder-1/fork.main-pressure", softer));
    expect(disputeLines(team.ledger)).toEqual([]);
  });
});
