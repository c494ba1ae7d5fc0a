import type { CommitReport } from "./commit-meter.ts";
import type { SnapshotReport } from "./snapshot/snapshot-keeper.ts";
import type { UpstreamStatus } from "./upstream/upstream.ts";

/** What the server tells about itself in numbers. */
export type ServerFacts = {
  readonly connections: number;
  readonly documents: number;
  readonly refusedUpdates: number;
  readonly isStoring: boolean;
  readonly logBytes: number;
  /** Updates that stand in the log beside the snapshots. */
  readonly logRows: number;
  readonly snapshots: SnapshotReport;
  readonly commits: CommitReport;
  /** Undefined without an upstream; then nothing is told of one. */
  readonly upstream: UpstreamStatus | undefined;
};

export const metricsType = "text/plain; version=0.0.4; charset=utf-8";

/**
 * The facts in Prometheus' text format, version 0.0.4.
 * Source: https://prometheus.io/docs/instrumenting/exposition_formats/#text-based-format.
 */
export function writeMetrics(facts: ServerFacts): string {
  const { commits, snapshots } = facts;
  const quantiles = [...commits.secondsByQuantile].map(([quantile, seconds]): Sample => {
    return [`{quantile="${quantile}"}`, seconds];
  });
  return [
    metric("connections", "gauge", "Sockets that are open.", facts.connections),
    metric("documents", "gauge", "Documents that are open.", facts.documents),
    metric("updates_total", "counter", "Updates written to the log since the start.", commits.updates),
    metric("refused_updates_total", "counter", "Updates refused since the start.", facts.refusedUpdates),
    metric("storing", "gauge", "1 when the newest write to the log succeeded, else 0.", facts.isStoring ? 1 : 0),
    metric("failed_commits_total", "counter", "Writes to the log that failed since the start.", commits.failures),
    family("commit_seconds", "summary", "Time of a write to the log with its flush to the disk.", [
      ...quantiles,
      ["_sum", commits.totalSeconds],
      ["_count", commits.commits],
    ]),
    metric("log_bytes", "gauge", "Bytes of the log on its disk.", facts.logBytes),
    metric("log_rows", "gauge", "Updates that stand in the log beside the snapshots.", facts.logRows),
    metric("failed_snapshots_total", "counter", "Snapshots that failed since the start.", snapshots.failures),
    family("snapshot_seconds", "summary", "Time of a snapshot, without the turns of others in between.", [
      ["_sum", snapshots.totalSeconds],
      ["_count", snapshots.snapshots],
    ]),
    metric(
      "longest_snapshot_turn_seconds",
      "gauge",
      "The longest time for which a snapshot kept others waiting.",
      snapshots.longestTurnSeconds,
    ),
    ...(facts.upstream === undefined ? [] : upstreamMetrics(facts.upstream)),
  ].join("");
}

function upstreamMetrics(upstream: UpstreamStatus): string[] {
  const { isConnected, links, documentsWaiting, secondsSinceContact = Number.NaN, refusals } = upstream;
  return [
    metric(
      "upstream_connected",
      "gauge",
      "1 when the upstream answered the newest question, else 0.",
      isConnected ? 1 : 0,
    ),
    metric("upstream_links", "gauge", "Sockets to the upstream.", links),
    metric(
      "upstream_documents_waiting",
      "gauge",
      "Documents not known to be the same at the upstream.",
      documentsWaiting,
    ),
    metric(
      "upstream_contact_age_seconds",
      "gauge",
      "Time since the upstream gave a sign of life.",
      secondsSinceContact,
    ),
    metric(
      "upstream_refusals_total",
      "counter",
      "Changes that one of the two servers refused to take from the other.",
      refusals,
    ),
  ];
}

type Sample = readonly [ending: string, value: number];
type MetricType = "gauge" | "counter" | "summary";

function metric(name: string, type: MetricType, help: string, value: number): string {
  return family(name, type, help, [["", value]]);
}

function family(name: string, type: MetricType, help: string, samples: readonly Sample[]): string {
  const full = `pitslate_${name}`;
  const lines = samples.map(([ending, value]) => `${full}${ending} ${value}\n`);
  return `# HELP ${full} ${help}\n# TYPE ${full} ${type}\n${lines.join("")}`;
}
