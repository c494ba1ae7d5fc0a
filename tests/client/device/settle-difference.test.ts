/** A client number that two devices used: equal clocks, different entries, and neither would ever send. */
import { describe, expect, test } from "vitest";
import * as Y from "yjs";
import { createServerHolding } from "#client/device/connection/server-holding.ts";
import { createDifferenceSettler } from "#client/device/connection/settle-difference.ts";
import { createContentDigest } from "#core/ledger/content-digest.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { DurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";

function record(n: number): LedgerRecord {
  return {
    version: 1,
    id: n.toString().padStart(26, "0"),
    subject: "paper:one",
    value: n,
    supersedes: [],
    by: "kim",
    device: "laptop",
    at: "2026-05-30T09:00:00.000Z",
  };
}

function documentOf(clientId: number, ...numbers: number[]): Y.Doc {
  const ydoc = new Y.Doc();
  ydoc.clientID = clientId;
  ydoc.getArray("records").push(numbers.map(record));
  return ydoc;
}

function acknowledgementOf(ydoc: Y.Doc): DurableAcknowledgement {
  const stateVector = Y.decodeStateVector(Y.encodeStateVector(ydoc));
  return { stateVector, digest: createContentDigest(ydoc).at(stateVector) };
}

const numbersIn = (ydoc: Y.Doc) =>
  [...new Set(ydoc.getArray<LedgerRecord>("records").map(({ value }) => value as number))].sort((a, b) => a - b);

/** What a sync of both sides by their clocks does. */
function synchronize(one: Y.Doc, other: Y.Doc): void {
  Y.applyUpdate(other, Y.encodeStateAsUpdate(one, Y.encodeStateVector(other)));
  Y.applyUpdate(one, Y.encodeStateAsUpdate(other, Y.encodeStateVector(one)));
}

describe("two replicas with different entries under one client number", () => {
  test("stay different when only clocks are compared", () => {
    const [ours, server] = [documentOf(5, 1, 2), documentOf(5, 3, 4)];
    synchronize(ours, server);
    expect(numbersIn(ours)).toEqual([1, 2]);
    expect(numbersIn(server)).toEqual([3, 4]);
  });

  test("are found by their content, and come to hold the same", () => {
    const [ours, server] = [documentOf(5, 1, 2), documentOf(5, 3, 4)];
    const holding = createServerHolding(createContentDigest(ours));
    const settler = createDifferenceSettler(ours, () => 9);
    expect(holding.acknowledge(acknowledgementOf(server))).toBe("differs");
    expect(holding.held()).toBeUndefined();
    expect(settler.differs(acknowledgementOf(server))).toBe("ask for everything");
    settler.receive(Y.encodeStateAsUpdate(server));
    expect(settler.differs(acknowledgementOf(server))).toBe("wait");
    synchronize(ours, server);
    expect(numbersIn(ours)).toEqual([1, 2, 3, 4]);
    expect(numbersIn(server)).toEqual([1, 2, 3, 4]);
    expect(holding.acknowledge(acknowledgementOf(server))).toBe("proven");
    expect(holding.held()).toEqual(acknowledgementOf(ours).stateVector);
  });

  test("that share the beginning add only what the other lacks", () => {
    const [ours, server] = [documentOf(5, 1, 2), documentOf(5, 1, 3)];
    const settler = createDifferenceSettler(ours, () => 9);
    settler.differs(acknowledgementOf(server));
    settler.receive(Y.encodeStateAsUpdate(server));
    expect(ours.getArray("records").length).toBe(4);
    synchronize(ours, server);
    expect(numbersIn(server)).toEqual([1, 2, 3]);
  });

  test("are not settled by an answer that is not the whole document", () => {
    const [ours, server] = [documentOf(5, 1, 2), documentOf(5, 3, 4)];
    const settler = createDifferenceSettler(ours, () => 9);
    const before = acknowledgementOf(server);
    server.clientID = 6;
    server.getArray("records").push([record(7)]);
    settler.differs(before);
    settler.receive(Y.encodeStateAsUpdate(server, Y.encodeStateVector(ours)));
    expect(numbersIn(ours)).toEqual([1, 2]);
    settler.receive(Y.encodeStateAsUpdate(server));
    expect(numbersIn(ours)).toEqual([1, 2, 3, 4, 7]);
  });

  test("take no entry of a server that is no record", () => {
    const [ours, server] = [documentOf(5, 1), documentOf(5)];
    server.getArray("records").push([{ nonsense: true }]);
    const settler = createDifferenceSettler(ours, () => 9);
    settler.differs(acknowledgementOf(server));
    settler.receive(Y.encodeStateAsUpdate(server));
    expect(ours.getArray("records").toArray()).toEqual([record(1), record(1)]);
  });

  test("that nothing makes equal are told to a person after three attempts", () => {
    const ours = documentOf(5, 1);
    const settler = createDifferenceSettler(ours, () => 9);
    for (let attempt = 0; attempt < 3; attempt += 1) {
      const server = documentOf(5, 100 + attempt);
      Y.applyUpdate(server, Y.encodeStateAsUpdate(ours, Y.encodeStateVector(server)));
      expect(settler.differs(acknowledgementOf(server))).toBe("ask for everything");
      settler.receive(Y.encodeStateAsUpdate(server));
    }
    const server = documentOf(5, 200);
    Y.applyUpdate(server, Y.encodeStateAsUpdate(ours, Y.encodeStateVector(server)));
    expect(settler.differs(acknowledgementOf(server))).toBe("tell");
  });

  test("are asked for everything a bounded number of times on one socket", () => {
    const [ours, server] = [documentOf(5, 1), documentOf(5, 2)];
    const settler = createDifferenceSettler(ours, () => 9);
    const answers = Array.from({ length: 7 }, () => settler.differs(acknowledgementOf(server)));
    expect(answers.filter((answer) => answer === "ask for everything")).toHaveLength(5);
    settler.socketEnded();
    expect(settler.differs(acknowledgementOf(server))).toBe("ask for everything");
  });
});

describe("a server that is ahead", () => {
  test("proves nothing until what it holds is here", () => {
    const [ours, server] = [documentOf(5, 1), documentOf(6, 2)];
    const holding = createServerHolding(createContentDigest(ours));
    Y.applyUpdate(server, Y.encodeStateAsUpdate(ours));
    expect(holding.acknowledge(acknowledgementOf(server))).toBe("ahead");
    synchronize(ours, server);
    expect(holding.acknowledge(acknowledgementOf(server))).toBe("proven");
  });
});
