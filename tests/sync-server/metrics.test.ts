import { request } from "node:http";
import { describe, expect, it } from "vitest";
import { measureCommits, newestCommits } from "#server/commit-meter.ts";
import { defaultSnapshotLimits } from "#server/snapshot/snapshot-keeper.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { join } from "./raw-device.ts";
import { deviceDocument, freshFolder, numbered, numbersIn, push, serve } from "./server-fixture.ts";
import { eventually, eventuallyRests, healthOf, serveBelow } from "./upstream-fixture.ts";

type Metric = { readonly type: string; readonly samples: ReadonlyMap<string, number> };

/**
 * Reads the text format by its rules: https://prometheus.io/docs/instrumenting/exposition_formats/#text-based-format.
 * One HELP and one TYPE line before the samples of a name, each line ends with a line feed, nothing else.
 */
function readMetrics(text: string): ReadonlyMap<string, Metric> {
  if (!text.endsWith("\n")) throw new Error("The last line has no line feed.");
  const metrics = new Map<string, { type: string; samples: Map<string, number> }>();
  let name = "";
  for (const line of text.slice(0, -1).split("\n")) {
    const head = /^# (HELP|TYPE) ([a-zA-Z_:][a-zA-Z0-9_:]*) (.+)$/.exec(line);
    if (head?.[1] === "HELP" && head[2] !== undefined && !metrics.has(head[2])) {
      name = head[2];
      metrics.set(name, { type: "", samples: new Map() });
      continue;
    }
    const current = metrics.get(name);
    if (head?.[1] === "TYPE" && head[2] === name && current?.type === "" && current.samples.size === 0) {
      current.type = head[3] ?? "";
      continue;
    }
    const sample = /^([a-zA-Z_:][a-zA-Z0-9_:]*)(\{[a-zA-Z_]\w*="[^"\\\n]*"\})? (NaN|\d+(?:\.\d+)?(?:e[+-]?\d+)?)$/.exec(
      line,
    );
    const [, full = "", labels = "", value = ""] = sample ?? [];
    const endings = current?.type === "summary" ? ["", "_sum", "_count"] : [""];
    if (current === undefined || !endings.some((ending) => full === name + ending))
      throw new Error(`Unreadable: ${line}`);
    current.samples.set(full.slice(name.length) + labels, Number(value));
  }
  return metrics;
}

async function metricsOf(server: { readonly url: string }) {
  const response = await fetch(`http://${server.url}/metrics`);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe("text/plain; version=0.0.4; charset=utf-8");
  const metrics = readMetrics(await response.text());
  return { metrics, value: (name: string, ending = "") => metrics.get(`pitslate_${name}`)?.samples.get(ending) };
}

describe("the metrics", () => {
  it("tell every number of a fresh server, with no commit time before the first commit", async () => {
    const { metrics, value } = await metricsOf(await serve());
    expect([...metrics].map(([name, { type }]) => `${name} ${type}`)).toEqual([
      "pitslate_connections gauge",
      "pitslate_documents gauge",
      "pitslate_updates_total counter",
      "pitslate_refused_updates_total counter",
      "pitslate_storing gauge",
      "pitslate_failed_commits_total counter",
      "pitslate_commit_seconds summary",
      "pitslate_log_bytes gauge",
      "pitslate_log_rows gauge",
      "pitslate_failed_snapshots_total counter",
      "pitslate_snapshot_seconds summary",
      "pitslate_longest_snapshot_turn_seconds gauge",
    ]);
    expect(value("connections")).toBe(0);
    expect(value("updates_total")).toBe(0);
    expect(value("storing")).toBe(1);
    expect(value("commit_seconds", '{quantile="0.5"}')).toBeNaN();
    expect(value("commit_seconds", "_count")).toBe(0);
  });

  it("count what happens: sockets, documents, updates, refusals, commits and the log's bytes on the disk", async () => {
    const server = await serve({ store: openSqliteStore(freshFolder()) });
    const before = await metricsOf(server);
    const [anna, ben] = [await join(server), await join(server, "team")];
    const document = deviceDocument(5);
    for (const n of [1, 2, 3]) {
      anna.sendUpdate(push(document, numbered(n, "x".repeat(5000))));
      await anna.next("acknowledgement");
    }
    ben.sendUpdate(new Uint8Array([1, 2, 3]));
    await ben.next("refusal");
    const { value } = await metricsOf(server);
    expect(value("connections")).toBe(2);
    expect(value("documents")).toBe(2);
    expect(value("updates_total")).toBe(3);
    expect(value("refused_updates_total")).toBe(1);
    expect(value("commit_seconds", "_count")).toBe(3);
    expect(value("commit_seconds", "_sum")).toBeGreaterThan(0);
    expect(value("commit_seconds", '{quantile="1"}')).toBeLessThanOrEqual(value("commit_seconds", "_sum") ?? 0);
    expect(value("log_bytes")).toBeGreaterThanOrEqual((before.value("log_bytes") ?? Number.NaN) + 15_000);
    anna.socket.close();
    await anna.closed;
    expect((await metricsOf(server)).value("documents")).toBe(1);
  });

  it("say that the log cannot be written", async () => {
    const full = {
      ...createMemoryStore(),
      append: () => {
        throw new Error("database or disk is full");
      },
    };
    const server = await serve({ store: full });
    const device = await join(server);
    device.sendUpdate(push(deviceDocument(5), numbered(1)));
    await device.closed;
    const { value } = await metricsOf(server);
    expect([value("storing"), value("failed_commits_total"), value("updates_total")]).toEqual([0, 1, 0]);
  });

  it("count snapshots, and the updates that stand beside them", async () => {
    const snapshotLimits = { ...defaultSnapshotLimits, rows: 2 };
    const server = await serve({ snapshotLimits });
    const anna = await join(server);
    const document = deviceDocument(5);
    const add = async (n: number) => {
      anna.sendUpdate(push(document, numbered(n)));
      await anna.next("acknowledgement");
    };
    for (const n of [1, 2]) await add(n);
    const before = await metricsOf(server);
    expect([before.value("log_rows"), before.value("snapshot_seconds", "_count")]).toEqual([2, 0]);
    await add(3);
    anna.socket.close();
    await anna.closed;
    let after = await metricsOf(server);
    const isTaken = () => after.value("snapshot_seconds", "_count") === 1;
    for (let tries = 0; !isTaken() && tries < 1000; tries++) after = await metricsOf(server);
    expect(after.value("log_rows")).toBe(0);
    expect(after.value("snapshot_seconds", "_count")).toBe(1);
    expect(after.value("snapshot_seconds", "_sum")).toBeGreaterThan(0);
    expect(after.value("longest_snapshot_turn_seconds")).toBeGreaterThan(0);
    expect(after.value("failed_snapshots_total")).toBe(0);
    const back = await join(server);
    expect(numbersIn(await back.everything())).toEqual([1, 2, 3]);
  });

  it("P44 and the health tell of the upstream, when there is one", async () => {
    const home = await serve();
    const pit = await serveBelow(home);
    const device = await join(pit);
    await eventuallyRests(pit);
    const { metrics, value } = await metricsOf(pit);
    expect([...metrics].map(([name, { type }]) => `${name} ${type}`).slice(-5)).toEqual([
      "pitslate_upstream_connected gauge",
      "pitslate_upstream_links gauge",
      "pitslate_upstream_documents_waiting gauge",
      "pitslate_upstream_contact_age_seconds gauge",
      "pitslate_upstream_refusals_total counter",
    ]);
    const names = ["connected", "links", "documents_waiting", "refusals_total"];
    expect(names.map((name) => value(`upstream_${name}`))).toEqual([1, 1, 0, 0]);
    expect(value("upstream_contact_age_seconds")).toBeGreaterThanOrEqual(0);
    expect(await healthOf(home)).toMatchObject({ upstream: null });
    await home.close();
    device.sendUpdate(push(deviceDocument(5), numbered(1)));
    await eventually(async () => {
      const { upstream, status } = await healthOf(pit);
      expect(upstream).toMatchObject({ isConnected: false, documentsWaiting: 1, links: 0 });
      expect(status).toBe("ok");
    });
    expect((await metricsOf(pit)).value("upstream_connected")).toBe(0);
  });

  it("P5 are refused to a name that is not this machine", async () => {
    const { port } = await serve();
    const answer = await new Promise((resolve, reject) => {
      request({ host: "127.0.0.1", port, path: "/metrics", headers: { host: "elsewhere.example" } }, (response) => {
        const parts: Buffer[] = [];
        response.on("data", (part: Buffer) => parts.push(part));
        response.on("end", () => resolve([response.statusCode, Buffer.concat(parts).toString()]));
      })
        .on("error", reject)
        .end();
    });
    expect(answer).toEqual([403, "This server answers this machine only.\n"]);
  });
});

describe("the meter of commits", () => {
  it("gives the quantiles of the newest commits by nearest rank, and the sum of all", () => {
    let nowMs = 0;
    let durationMs = 0;
    const memory = createMemoryStore();
    const log = {
      ...memory,
      append: (entries: Parameters<typeof memory.append>[0]) => {
        nowMs += durationMs;
        memory.append(entries);
      },
    };
    const { store, report } = measureCommits(log, () => nowMs);
    const commit = (ms: number) => {
      durationMs = ms;
      store.append([{ document: "team", update: new Uint8Array([1]) }]);
    };
    commit(60_000);
    for (let ms = 1; ms <= newestCommits; ms++) commit(ms);
    expect([...report().secondsByQuantile]).toEqual([
      [0.5, 0.5],
      [0.9, 0.9],
      [0.99, 0.99],
      [1, 1],
    ]);
    expect(report().totalSeconds).toBeCloseTo(60 + 500.5, 6);
    expect(report()).toMatchObject({ commits: newestCommits + 1, updates: newestCommits + 1, failures: 0 });
  });
});
