export const logLevels = ["debug", "info", "warn", "error", "silent"] as const;
export type LogLevel = (typeof logLevels)[number];

export type LogFacts = Readonly<Record<string, string | number | boolean>>;

/** One event a call: what happened, and the facts of it. */
export type Logger = Readonly<Record<Exclude<LogLevel, "silent">, (event: string, facts?: LogFacts) => void>>;

/** A logger that gives each event at or above `level` to `write` as one line of JSON. */
export function createLogger(level: LogLevel, write: (line: string) => void): Logger {
  const lowest = logLevels.indexOf(level);
  const at = (own: Exclude<LogLevel, "silent">) => {
    if (logLevels.indexOf(own) < lowest) return () => {};
    return (event: string, facts: LogFacts = {}) => write(JSON.stringify({ level: own, event, ...facts }));
  };
  return { debug: at("debug"), info: at("info"), warn: at("warn"), error: at("error") };
}

/** The message of whatever was thrown. */
export function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
