import { describe, expect, it } from "vitest";
import type * as Y from "yjs";
import { courseKind } from "#core/weekend/record-kinds.ts";
import { createChance } from "#scenarios/player/chance.ts";
import { createNetwork } from "#scenarios/player/network.ts";
import { createSimulatedDevice } from "#scenarios/player/simulated-device.ts";

const course = (metres: number) => ({
  mix: { steep: 1, jumpy: 0, wet: 0 },
  altitude: { value: metres, unit: "m" as const },
});

function twoDevices() {
  const chance = createChance(11);
  const network = createNetwork(chance);
  const [one, other] = ["one", "other"].map((id) =>
    createSimulatedDevice({
      id,
      member: id,
      documentNames: ["team"],
      season: 2026,
      chance,
      now: () => 1_790_000_000_000,
    }),
  );
  if (!one || !other) throw new Error("Two devices were asked for.");
  network.join(one);
  network.join(other);
  return { network, one, other };
}

describe("the simulated network", () => {
  it("brings what one device writes to the other", () => {
    const { network, one, other } = twoDevices();
    one.writer.set(courseKind, "w", course(100));
    expect(other.ledger.size, "before anything is delivered").toBe(0);
    network.settle();
    expect(other.ledger.current(courseKind, "w")).toMatchObject({ state: "settled", value: course(100) });
  });

  it("holds back both ways while it is cut, and makes all good afterwards", () => {
    const { network, one, other } = twoDevices();
    network.cut("one");
    one.writer.set(courseKind, "w", course(100));
    other.writer.set(courseKind, "w", course(200));
    network.settle();
    expect([one.ledger.size, other.ledger.size]).toEqual([1, 1]);
    network.reconnect("one");
    network.settle();
    for (const { ledger } of [one, other]) expect(ledger.current(courseKind, "w").state).toBe("disputed");
  });

  it("loses what is on its way when it is cut, and sends it again on reconnecting", () => {
    const { network, one, other } = twoDevices();
    one.writer.set(courseKind, "w", course(100));
    network.cut("one");
    network.settle();
    expect(other.ledger.size).toBe(0);
    network.reconnect("one");
    network.settle();
    expect(other.ledger.size).toBe(1);
  });

  it("refuses at the hub what is no record", () => {
    const { network, one } = twoDevices();
    one.documents.get("team")?.getArray("records").push(["nonsense"]);
    expect(() => network.settle()).toThrow("The hub refused an update of one");
  });

  it("never gives two documents one client number", () => {
    const chance = createChance(1);
    const documents = Array.from({ length: 200 }, (_, index) => `rider/r${index}/2026`);
    const device = createSimulatedDevice({
      id: "d",
      member: "m",
      documentNames: documents,
      season: 2026,
      chance,
      now: () => 0,
    });
    const numbers = [...device.documents.values()].map((ydoc: Y.Doc) => ydoc.clientID);
    expect(new Set(numbers).size).toBe(200);
  });
});
