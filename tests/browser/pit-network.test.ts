/** The proxy of the browser tests does to a connection what it says: else those tests prove nothing. */
import { once } from "node:events";
import { type AddressInfo, connect, createServer, type Server, type Socket } from "node:net";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createChance } from "#scenarios/player/chance.ts";
import { openPitNetwork, type PitNetwork } from "./pit-network.ts";

const HEAD = "GET / HTTP/1.1\r\n\r\n";

let laptop: Server;
/** The laptop's ends of the connections, in the order in which they came. */
let ends: Socket[];
let network: PitNetwork;
let devices: Socket[];

beforeEach(async () => {
  ends = [];
  devices = [];
  laptop = createServer((end) => {
    ends.push(end);
    end.on("error", () => {});
    end.pipe(end);
  }).listen(0, "127.0.0.1");
  await once(laptop, "listening");
  network = await openPitNetwork((laptop.address() as AddressInfo).port, createChance(7));
});

afterEach(async () => {
  for (const socket of [...devices, ...ends]) socket.destroy();
  await network.close();
  laptop.close();
});

/** A connection, and what it has received. */
function open(way: PitNetwork = network) {
  const socket = connect(Number(new URL(way.origin).port), "127.0.0.1");
  devices.push(socket);
  let received = "";
  let error: NodeJS.ErrnoException | undefined;
  socket.on("data", (chunk: Buffer) => {
    received += chunk.toString();
  });
  socket.on("error", (failure) => {
    error = failure;
  });
  const closed = new Promise((resolve) => socket.once("close", resolve));
  return { socket, received: () => received, error: () => error, closed };
}

async function until(condition: () => boolean, socket: Socket): Promise<void> {
  while (!condition()) await once(socket, "data");
}

/** By then a message has gone to the laptop and back on a network that passes. */
async function roundTrip(): Promise<void> {
  const free = await openPitNetwork((laptop.address() as AddressInfo).port);
  const { socket, received } = open(free);
  socket.write("there and back");
  await until(() => received() === "there and back", socket);
  await free.close();
}

describe("the network of a test", () => {
  test("cut resets what is open and what comes", async () => {
    const first = open();
    first.socket.write("a");
    await until(() => first.received() === "a", first.socket);
    network.cut();
    await first.closed;
    expect(first.error()?.code).toBe("ECONNRESET");
    const second = open();
    await second.closed;
    expect(ends).toHaveLength(1);
    network.restore();
    const third = open();
    third.socket.write("b");
    await until(() => third.received() === "b", third.socket);
  });

  test("delay holds chunks for times drawn from the seed, and none overtakes another", async () => {
    const drawn: number[] = [];
    const chance = createChance(3);
    const slow = await openPitNetwork((laptop.address() as AddressInfo).port, {
      ...chance,
      below: (count) => {
        drawn.push(chance.below(count));
        return drawn.at(-1) ?? 0;
      },
    });
    slow.turn({ kind: "delay", longestMs: 30 });
    const { socket, received } = open(slow);
    const words = Array.from({ length: 40 }, (_, index) => `<${index}>`);
    for (const word of words) {
      const before = drawn.length;
      socket.write(word);
      await until(() => received().endsWith(word), socket);
      expect(drawn.length).toBeGreaterThanOrEqual(before + 2);
    }
    expect(received()).toBe(words.join(""));
    expect(Math.max(...drawn)).toBeGreaterThan(20);
    await slow.close();
  });

  test("half-open lets nothing pass and closes nothing, also on new connections, and what waited passes afterwards", async () => {
    const first = open();
    first.socket.write("a");
    await until(() => first.received() === "a", first.socket);
    network.turn({ kind: "half-open" });
    const second = open();
    await once(second.socket, "connect");
    first.socket.write("b");
    second.socket.write("c");
    ends[0]?.write("from the laptop");
    await roundTrip();
    expect([first.received(), second.received()]).toEqual(["a", ""]);
    expect([first.socket.readyState, second.socket.readyState, ends[0]?.readyState]).toEqual(["open", "open", "open"]);
    network.restore();
    await until(() => first.received().length === "abfrom the laptop".length, first.socket);
    await until(() => second.received() === "c", second.socket);
  });

  test("a side that ends in a black hole ends for the other only afterwards", async () => {
    const { socket, received } = open();
    socket.write("a");
    await until(() => received() === "a", socket);
    network.turn({ kind: "half-open" });
    socket.destroy();
    await roundTrip();
    const [end] = ends;
    if (!end) throw new Error("The laptop was not reached.");
    expect(end.readyState).toBe("open");
    const ended = once(end, "end");
    network.restore();
    await ended;
  });

  test("truncate lets the head of a connection pass, and ends it in the middle of what follows", async () => {
    network.turn({ kind: "truncate", mostBytes: 500 });
    const lengths = new Set<number>();
    for (let round = 0; round < 10; round += 1) {
      const { socket, received, closed } = open();
      socket.write(HEAD);
      await until(() => received() === HEAD, socket);
      ends.at(-1)?.write("x".repeat(1000));
      await closed;
      const passed = received().length - HEAD.length;
      expect(passed).toBeGreaterThanOrEqual(1);
      expect(passed).toBeLessThanOrEqual(500);
      lengths.add(passed);
    }
    expect(lengths.size).toBeGreaterThan(5);
  });
});
