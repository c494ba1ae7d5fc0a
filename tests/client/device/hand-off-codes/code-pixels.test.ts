/**
 * Codes as a camera sees them: the frames of a sequence drawn as QR codes, their pixels turned into noisy pictures, and
 * those read again, with a third of them dropped and the rest out of order.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { type CodeKind, frameBytes, largestQrVersion, payloadBytes } from "#client/device/hand-off/codes/code-frame.ts";
import { type CodeSequence, createCodeSequence } from "#client/device/hand-off/codes/code-sequence.ts";
import { type CodeOutcome, collectCodes } from "#client/device/hand-off/codes/collect-codes.ts";
import { codeModules } from "#client/device/hand-off/codes/draw-code.ts";
import type { Picture } from "#client/device/hand-off/codes/picture.ts";
import { type CodeReader, createCodeReader } from "#client/device/hand-off/codes/read-code.ts";
import type { TeamDevice } from "#client/device/team-device.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { bytesOf, shuffled } from "./seeded.ts";
import { deviceWith, emptyDevice, KEY, setting } from "./unreachable-devices.ts";

let read: CodeReader;

beforeAll(async () => {
  const wasm = readFileSync(fileURLToPath(import.meta.resolve("zxing-wasm/reader/zxing_reader.wasm")));
  read = await createCodeReader({ bytes: new Uint8Array(wasm).buffer });
});

function sequenceOf(content: Uint8Array, kind: CodeKind = "answer"): CodeSequence {
  const made = createCodeSequence(kind, content);
  if (!made.ok) throw new Error(made.problem.type);
  return made.sequence;
}

/**
 * A code before a camera of 640 by 480 pixels: somewhere in a grey picture, a module as many pixels wide as said (not
 * a whole number), edges blurred by a pixel, black and white washed out by glare, noise of a dim light.
 */
function photographed(frame: Uint8Array, pixelsPerModule: number, seed: number): Picture {
  const { next } = createChance(seed);
  const modules = codeModules(frame);
  const [width, height] = [640, 480];
  const [left, top] = [next() * 40, next() * 40];
  const light = (x: number, y: number): number => {
    const isDark = modules[Math.floor((y - top) / pixelsPerModule)]?.[Math.floor((x - left) / pixelsPerModule)];
    return isDark === undefined ? 120 : isDark ? 50 : 210;
  };
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const blurred = (light(x, y) + light(x + 0.5, y) + light(x, y + 0.5) + light(x + 0.5, y + 0.5)) / 4;
      data.fill(blurred + (next() - 0.5) * 60, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  }
  return { data, width, height };
}

/** What a device collects that looks at these frames; it stops when it has the whole. */
async function filmed(frames: readonly Uint8Array[], pixelsPerModule: number, kind: CodeKind = "answer") {
  const collection = collectCodes([kind]);
  let pictures = 0;
  for (const [index, frame] of frames.entries()) {
    for (const bytes of await read(photographed(frame, pixelsPerModule, index + 1))) {
      pictures += 1;
      const outcome = collection.add(bytes);
      if (outcome.type === "done") return { pictures, content: outcome.content };
    }
  }
  return { pictures, content: undefined };
}

/** Frames as they are shown, with a third left out and out of order. */
function seen(sequence: CodeSequence, seed: number): readonly Uint8Array[] {
  const shown = Array.from({ length: sequence.blocks * 2 + 12 }, (_, number) => number);
  const isDropped = (place: number): boolean => place % 3 === 0;
  return shuffled(shown, seed)
    .filter((_, place) => !isDropped(place))
    .map(sequence.frame);
}

/** What `from` shows, filmed by a device that waits for it. */
async function passed(content: Uint8Array, kind: CodeKind): Promise<Uint8Array> {
  const { content: whole } = await filmed(seen(sequenceOf(content, kind), 11), 3.3, kind);
  if (whole === undefined) throw new Error("The codes did not suffice.");
  return whole;
}

async function handOver(from: TeamDevice, to: TeamDevice): Promise<void> {
  const holdings = await passed(await (await to.codes()).holdings(), "holdings");
  const made = await (await from.codes()).answer(holdings, "Kim Larch");
  if (!made.ok) throw new Error(made.problem.type);
  const reading = await (await to.codes()).readAnswer(await passed(made.content, "answer"));
  const merged = reading.ok ? await to.importBundle(reading.bundle) : reading;
  if (!merged.ok) throw new Error(merged.problem.type);
}

describe("codes read from pixels", () => {
  test("give a whole sequence again with a third of its frames dropped and the rest out of order", async () => {
    const content = bytesOf(30 * payloadBytes - 17, 5);
    const { pictures, content: again } = await filmed(seen(sequenceOf(content), 5), 3.3);
    expect(again).toEqual(content);
    expect(pictures).toBeLessThan(40);
  });

  // 2.8 is what a laptop's camera gives for a code on a phone's screen (code-frame.ts).
  test.each([2.4, 2.8, 4.7])("are read at %s pixels a module when they carry as much as any code", async (scale) => {
    const sequence = sequenceOf(bytesOf(6 * payloadBytes, 6));
    const frames = [0, 1, 2, 3, 4, 5].map(sequence.frame);
    expect(frames[0]?.length).toBe(frameBytes);
    expect(codeModules(frames[0] ?? new Uint8Array()).length).toBe(17 + 4 * largestQrVersion + 8);
    expect((await filmed(frames, scale)).content).toBeDefined();
  });

  test("lie in a quiet zone of four modules of white", () => {
    const modules = codeModules(sequenceOf(bytesOf(100, 1)).frame(0));
    const rows = [...modules.slice(0, 4), ...modules.slice(-4)].flat();
    const columns = modules.flatMap((row) => [...row.slice(0, 4), ...row.slice(-4)]);
    expect([...rows, ...columns].some((isDark) => isDark)).toBe(false);
    expect(modules[4]?.slice(4, 11).every((isDark) => isDark)).toBe(true);
  });

  test("of no code, or of noise, give nothing", async () => {
    const data = new Uint8ClampedArray(bytesOf(320 * 240 * 4, 3));
    expect(await read({ data, width: 320, height: 240 })).toEqual([]);
  });

  test("with a stain over the middle give the code whole or not at all", async () => {
    const sequence = sequenceOf(bytesOf(3 * payloadBytes, 8));
    let whole = 0;
    for (const stain of [10, 40, 90, 160]) {
      const picture = photographed(sequence.frame(0), 4, stain);
      for (let y = 0; y < stain; y++) {
        for (let x = 0; x < stain; x++)
          picture.data.fill(255, ((y + 150) * 640 + x + 150) * 4, ((y + 150) * 640 + x + 151) * 4);
      }
      for (const bytes of await read(picture)) {
        expect(bytes).toEqual(sequence.frame(0));
        whole += 1;
      }
    }
    expect(whole).toBeGreaterThan(0);
    expect(whole).toBeLessThan(4);
  });
});

describe("two devices with nothing but their screens and cameras", () => {
  test("bring a new device up to date, and then one change more", async () => {
    const pit = await deviceWith("pit");
    const phone = emptyDevice("phone");
    await handOver(pit, phone);
    expect(settledValue(phone.ledger.current(settingKind, KEY))).toEqual(setting(62));
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    await handOver(pit, phone);
    expect(settledValue(phone.ledger.current(settingKind, KEY))).toEqual(setting(64));
    expect(phone.ledger.size).toBe(pit.ledger.size);
  });

  test("bring over two hundred changes, which take many codes", async () => {
    const pit = await deviceWith("pit");
    const phone = await deviceWith("phone");
    for (let psi = 0; psi < 200; psi++) pit.writerFor("kim").set(settingKind, KEY, setting(40 + psi / 10));
    await handOver(pit, phone);
    expect(settledValue(phone.ledger.current(settingKind, KEY))).toEqual(setting(59.9));
  });

  test("are told so by a code of another hand-off between them, and go on", async () => {
    const content = bytesOf(3 * payloadBytes, 12);
    const collection = collectCodes(["answer"]);
    const outcomes: CodeOutcome["type"][] = [];
    const stray = sequenceOf(bytesOf(500, 13)).frame(0);
    const mixed = [...[0, 1].map(sequenceOf(content).frame), stray, sequenceOf(content).frame(2)];
    for (const [index, frame] of mixed.entries()) {
      for (const bytes of await read(photographed(frame, 4, index))) outcomes.push(collection.add(bytes).type);
    }
    expect(outcomes).toEqual(["read", "read", "left out", "done"]);
  });
});
