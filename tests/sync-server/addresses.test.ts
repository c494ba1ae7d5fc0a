import { describe, expect, it } from "vitest";
import { documentNameInPath } from "#server/document-path.ts";
import { createLogger } from "#server/logging.ts";
import { isFromThisMachine, isLoopbackHost } from "#server/loopback.ts";

describe("the document name in a path", () => {
  it.each([
    ["/sync/team", "team"],
    ["/sync/rider/anna/2031", "rider/anna/2031"],
    ["/sync/rider%2Fanna%2F2031", "rider/anna/2031"],
    ["/sync/team?client=5", "team"],
    ["/sync/", ""],
    ["/sync/../team", "../team"],
    ["/sync/%zz", undefined],
    ["/sync", undefined],
    ["/synchro/team", undefined],
    ["/", undefined],
    [undefined, undefined],
  ])("of %s is %s", (url, name) => {
    expect(documentNameInPath(url)).toBe(name);
  });
});

describe("what comes from this machine", () => {
  it.each([
    ["127.0.0.1:4680", undefined, true],
    ["localhost:4680", "http://localhost:4680", true],
    ["[::1]:4680", "http://[::1]:4680", true],
    ["localhost", "http://127.0.0.1:5173", true],
    ["localhost.elsewhere.example", undefined, false],
    ["127.0.0.1.elsewhere.example", undefined, false],
    ["localhost", "http://localhost.elsewhere.example", false],
    ["localhost", "null", false],
    ["localhost", "", false],
    ["localhost", "file://", false],
    ["", undefined, false],
    [undefined, undefined, false],
    ["elsewhere.example@localhost", undefined, true],
    ["localhost@elsewhere.example", undefined, false],
  ])("Host %s with Origin %s: %s", (host, origin, expected) => {
    expect(isFromThisMachine(host, origin)).toBe(expected);
  });

  it("is the loopback and no other address to listen on", () => {
    expect(["127.0.0.1", "::1", "localhost"].every(isLoopbackHost)).toBe(true);
    expect(["0.0.0.0", "::", "192.168.1.10", "127.0.0.1 ", ""].some(isLoopbackHost)).toBe(false);
  });
});

it("logs one line of JSON for each event at or above its level, and none when silent", () => {
  const lines: string[] = [];
  const logger = createLogger("warn", (line) => lines.push(line));
  logger.debug("a");
  logger.info("b");
  logger.warn("update refused", { bytes: 7, document: "two\nlines" });
  logger.error("d");
  createLogger("silent", (line) => lines.push(line)).error("e");
  expect(lines.map((line) => JSON.parse(line))).toEqual([
    { level: "warn", event: "update refused", bytes: 7, document: "two\nlines" },
    { level: "error", event: "d" },
  ]);
  expect(lines.every((line) => !line.includes("\n"))).toBe(true);
});
