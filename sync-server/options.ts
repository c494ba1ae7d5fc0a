import { parseArgs } from "node:util";
import { type LogLevel, logLevels } from "./logging.ts";
import { isLoopbackHost } from "./loopback.ts";
import { defaultSnapshotLimits } from "./snapshot/snapshot-keeper.ts";
import { parseUpstreamUrl } from "./upstream/upstream-url.ts";

export type CommandLine = {
  readonly host: string;
  readonly port: number;
  readonly dataFolder: string;
  readonly clientFolder: string;
  readonly logLevel: LogLevel;
  /** Updates of one document beside its snapshot, above which a new one is due. */
  readonly snapshotRows: number;
  /** The server to keep equal with; undefined for none. */
  readonly upstream: URL | undefined;
};

export type ParsedCommandLine =
  | { readonly state: "run"; readonly options: CommandLine }
  | { readonly state: "help" }
  | { readonly state: "refused"; readonly sentence: string };

export const helpText = `Pitslate server: serves the planner and keeps its records.

Options
  --port <number>      port to listen on, 0 to 65535; 0 takes a free one (default 4680)
  --host <name>        loopback name or address to listen on (default 127.0.0.1)
  --data <folder>      folder of the log (default ./data)
  --client <folder>    folder of the built client (default client/dist)
  --snapshot-rows <n>  updates of a document above which they are put together, 1 to 1000000 (default ${defaultSnapshotLimits.rows})
  --upstream <url>     the team's home server: this server works alone, and both become equal whenever it can be
                       reached. A home server answers its own machine only, so for now the address has to lead to
                       it through a tunnel that ends on this machine, for example http://127.0.0.1:4681
  --log-level <level>  ${logLevels.join(", ")} (default info)
  --help               this text
`;

/** Reads the command line; each mistake gives one sentence. */
export function parseCommandLine(args: readonly string[]): ParsedCommandLine {
  const values = read(args);
  if (typeof values === "string") return refused(values);
  if (values.help) return { state: "help" };
  const port = parseWhole(values.port, 0, 65_535);
  if (port === undefined) {
    return refused(`--port is "${values.port}"; it must be a whole number from 0 to 65535.`);
  }
  if (!isLoopbackHost(values.host)) {
    return refused(
      `--host is "${values.host}"; only 127.0.0.1, ::1 or localhost is allowed while there is no access control.`,
    );
  }
  const logLevel = logLevels.find((level) => level === values["log-level"]);
  if (logLevel === undefined) {
    return refused(`--log-level is "${values["log-level"]}"; it must be one of ${logLevels.join(", ")}.`);
  }
  const snapshotRows = parseWhole(values["snapshot-rows"], 1, 1_000_000);
  if (snapshotRows === undefined) {
    return refused(`--snapshot-rows is "${values["snapshot-rows"]}"; it must be a whole number from 1 to 1000000.`);
  }
  for (const name of ["data", "client"] as const) {
    if (values[name] === "") return refused(`--${name} is empty; it must name a folder.`);
  }
  const upstream = values.upstream === undefined ? undefined : parseUpstreamUrl(values.upstream);
  if (upstream?.ok === false) return refused(upstream.sentence);
  return {
    state: "run",
    options: {
      host: values.host,
      port,
      dataFolder: values.data,
      clientFolder: values.client,
      logLevel,
      snapshotRows,
      upstream: upstream?.url,
    },
  };
}

function read(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        port: { type: "string", default: "4680" },
        host: { type: "string", default: "127.0.0.1" },
        data: { type: "string", default: "./data" },
        client: { type: "string", default: "client/dist" },
        "snapshot-rows": { type: "string", default: String(defaultSnapshotLimits.rows) },
        upstream: { type: "string" },
        "log-level": { type: "string", default: "info" },
        help: { type: "boolean", default: false },
      },
    }).values;
  } catch (error) {
    // parseArgs explains at length after its first sentence.
    const [sentence] = (error instanceof Error ? error.message : String(error)).split(/\.\s|\n/, 1);
    return `${sentence?.replace(/\.$/, "")}; --help lists the options.`;
  }
}

function refused(sentence: string): ParsedCommandLine {
  return { state: "refused", sentence };
}

function parseWhole(text: string, least: number, most: number): number | undefined {
  if (!/^\d{1,7}$/.test(text)) return undefined;
  const number = Number(text);
  return number >= least && number <= most ? number : undefined;
}
