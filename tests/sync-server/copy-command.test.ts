import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type ParsedCopyCommand, parseCopyCommand } from "#server/copy-command.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { deviceDocument, freshFolder, numbered, numbersInLog, push, season } from "./server-fixture.ts";
import { runScript } from "./server-process.ts";

const refused = (sentence: string): ParsedCopyCommand => ({ state: "refused", sentence });

const parsings: [string[], string | undefined, ParsedCopyCommand][] = [
  [["a.backup"], "./data", { state: "run", file: "a.backup", folder: "./data" }],
  [["a.backup", "--data", "d"], "./data", { state: "run", file: "a.backup", folder: "d" }],
  [["--data", "d", "a.backup"], undefined, { state: "run", file: "a.backup", folder: "d" }],
  [["--help", "a", "b"], undefined, { state: "help" }],
  [["a.backup"], undefined, refused("Name the data folder with --data.")],
  [["a.backup", "--data", ""], "./data", refused("--data is empty; it must name a folder.")],
  [[], "./data", refused("Name one file; --help tells how.")],
  [[""], "./data", refused("Name one file; --help tells how.")],
  [["a", "b"], "./data", refused("Name one file; --help tells how.")],
  [["a", "--bogus"], "./data", refused("Unknown option '--bogus'; --help lists the options.")],
  [["a", "--data"], "./data", refused("Option '--data <value>' argument missing; --help lists the options.")],
];

describe("the command line of backup and restore", () => {
  it.each(parsings)("reads %j with the default folder %s", (args, defaultFolder, expected) => {
    expect(parseCopyCommand(args, defaultFolder)).toEqual(expected);
  });

  it("brings the records from one folder into another, and says what it did", async () => {
    const folder = freshFolder();
    const [from, file, to] = [join(folder, "from"), join(folder, "weekend.backup"), join(folder, "to")];
    const store = openSqliteStore(from);
    store.append([{ document: season, update: push(deviceDocument(5), numbered(1)) }]);
    store.close();
    const backup = await runScript("sync-server/backup.ts", file, "--data", from);
    expect(backup).toMatchObject({ code: 0, errors: "" });
    expect(backup.output).toMatch(/^Backed up: documents 1, snapshots 0, updates 1, bytes \d+\.\n$/);
    const restore = await runScript("sync-server/restore.ts", file, "--data", to);
    expect(restore).toMatchObject({ code: 0, errors: "" });
    expect(restore.output).toMatch(/^Restored: documents 1, snapshots 0, updates 1, bytes \d+\.\n$/);
    const restored = openSqliteStore(to);
    expect(numbersInLog(restored)).toEqual([1]);
    restored.close();
  });

  it("leaves with 1 and one sentence when it cannot be done, and with 2 when it is not understood", async () => {
    const folder = freshFolder();
    const missing = join(folder, "none.backup");
    const [impossible, unclear] = await Promise.all([
      runScript("sync-server/restore.ts", missing, "--data", join(folder, "to")),
      runScript("sync-server/restore.ts", missing),
    ]);
    expect(impossible).toMatchObject({ code: 1, output: "", errors: `There is no file ${missing}.\n` });
    expect(unclear).toMatchObject({ code: 2, output: "", errors: "Name the data folder with --data.\n" });
  });
});
