import { parseArgs } from "node:util";
import { type LogLevel, logLevels } from "./logging.ts";
import { isLoopbackHost } from "./loopback.ts";

export type CommandLine = {
  readonly host: string;
  readonly port: number;
  readonly dataFolder: string;
  readonly clientFolder: string;
  readonly logLevel: LogLevel;
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
  --log-level <level>  ${logLevels.join(", ")} (default info)
  --help               this text
`;

/** Reads the command line; each mistake gives one sentence. */
export function parseCommandLine(args: readonly string[]): ParsedCommandLine {
  const values = read(args);
  if (typeof values === "string") return refused(values);
  if (values.help) return { state: "help" };
  const port = parsePort(values.port);
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
  for (const name of ["data", "client"] as const) {
    if (values[name] === "") return refused(`--${name} is empty; it must name a folder.`);
  }
  return {
    state: "run",
    options: { host: values.host, port, dataFolder: values.data, clientFolder: values.client, logLevel },
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

function parsePort(text: string): number | undefined {
  if (!/^\d{1,5}$/.test(text)) return undefined;
  const port = Number(text);
  return port <= 65_535 ? port : undefined;
}
