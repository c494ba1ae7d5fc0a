import { expect, it, onTestFinished } from "vitest";
import { bundleServer } from "./bundled-server.ts";
import { killAgainAndAgain } from "./kill-rounds.ts";
import { freshFolder } from "./server-fixture.ts";

/** As many as take less than half a minute on two cores; `npm run kill` does as many as you like. */
const rounds = 120;
const seed = 20_310_504;

it("P12 holds every update that it acknowledged or passed on, killed again and again under load", async () => {
  const { script, remove } = await bundleServer();
  onTestFinished(remove);
  const { promised, broken } = await killAgainAndAgain({ program: [script], folder: freshFolder(), rounds, seed });
  expect(broken, `seed ${seed}`).toEqual([]);
  expect(promised).toBeGreaterThan(rounds);
});
