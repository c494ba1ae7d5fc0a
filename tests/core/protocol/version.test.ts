import { createHash } from "node:crypto";
import { expect, it } from "vitest";
import * as Y from "yjs";
import * as z from "zod/mini";
import { closeCode } from "#core/protocol/close-code.ts";
import { encodeDurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import * as limits from "#core/protocol/limits.ts";
import { messageType, syncMessageType } from "#core/protocol/message-type.ts";
import { protocolVersion } from "#core/protocol/protocol-version.ts";
import { encodeReceipts } from "#core/protocol/receipt.ts";
import { encodeRefusal, refusalSchema } from "#core/protocol/refusal.ts";

/** What a peer can observe, by version. A new form gets a new line here and a new number, and the old lines stay. */
const fingerprints: Readonly<Record<number, string>> = {
  1: "98b01f358706e99a14ebd0caf9516b9d9b79e2881f6a01bf92a395129358fa82",
  2: "55f63f2097900232a7148d6dbe6f637528a5082c78b1c0e2666136969efe57ed",
  3: "5b031023c539320b1bad93a4fd87c0a180678a9dc0dd86aba9a9e2d212319dd9",
  4: "c807c335bab30b36057828ee8dd27dd0634ddd7a8e8b376fe2938c601984fde6",
};

it("has the forms of its version: a change of them needs the next version and its fingerprint", () => {
  const forms = {
    messageType,
    syncMessageType,
    closeCode,
    limits: { ...limits },
    refusal: z.toJSONSchema(refusalSchema),
  };
  const fingerprint = createHash("sha256").update(JSON.stringify(forms)).digest("hex");
  expect(fingerprint).toBe(fingerprints[protocolVersion]);
  expect(Math.max(...Object.keys(fingerprints).map(Number))).toBe(protocolVersion);
});

it("writes the bytes that it has written since version 3", () => {
  const digest = new Uint8Array(32).fill(7);
  const acknowledgement = encodeDurableAcknowledgement(Y.encodeStateVector(new Map([[300, 2]])), digest);
  expect(Buffer.from(acknowledgement).toString("hex")).toBe(`640401ac020220${"07".repeat(32)}`);
  expect(Buffer.from(encodeRefusal({ type: "gap", sentence: "Late." })).toString("latin1")).toBe(
    'e!{"type":"gap","sentence":"Late."}',
  );
  const receipt = { device: "p", member: "kim", count: 2, at: 300, stateVector: new Map([[300, 2]]), digest };
  expect(Buffer.from(encodeReceipts([receipt])).toString("hex")).toBe(
    `6601${"0170"}${"036b696d"}${"02"}${"ac02"}${"0401ac0202"}${"20"}${"07".repeat(32)}`,
  );
});

it("keeps our numbers apart from those of y-websocket", () => {
  const numbers = Object.values(messageType);
  expect(new Set(numbers).size).toBe(numbers.length);
  expect([messageType.sync, messageType.awareness, messageType.auth, messageType.queryAwareness]).toEqual([0, 1, 2, 3]);
});
