import { expect, it, onTestFinished } from "vitest";
import { bundleServer } from "./bundled-server.ts";
import { killAgainAndAgain } from "./kill-rounds.ts";
import { freshFolder } from "./server-fixture.ts";

/** `npm run kill` does as many as you like. */
const rounds = 300;
const seed = 20_310_504;
/** Half a minute on two cores of its own; beside other tests, or on a busy machine, several times that. */
const patienceMs = 600_000;

it(
  "P12 holds every update that it acknowledged or passed on, killed again and again under load",
  async () => {
    const { script, remove } = await bundleServer();
    onTestFinished(remove);
    const options = { program: [script], folder: freshFolder(), rounds, seed, lanes: 2 };
    const report = await killAgainAndAgain(options);
    process.stdout.write(
      `${report.rounds} kills, ${report.amidSnapshot} in the middle of a snapshot: ${report.promised} records promised\n`,
    );
    expect(report.broken, `seed ${seed}`).toEqual([]);
    expect(report.rounds).toBe(rounds);
    expect(report.promised).toBeGreaterThan(rounds);
    expect(report.snapshots).toBeGreaterThan(0);
    expect(report.amidSnapshot).toBeGreaterThan(0);
  },
  patienceMs,
);
