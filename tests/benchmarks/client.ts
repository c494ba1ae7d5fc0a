/** How the screens do on a slow device with a long history: what they load, how soon they answer, and what they keep. */
import { build } from "vite";
import { launchChromium } from "#scenarios/printing/chromium.ts";
import { root } from "#tests/source-files.ts";
import { benchFirstVisit } from "./client/first-visit.ts";
import { demoHistory, demoRiders, startHistoryLaptop } from "./client/history-laptop.ts";
import { longTasksAfterStart, reportLongTasks } from "./client/long-tasks.ts";
import { benchMemory } from "./client/memory.ts";
import { benchOfflineStart } from "./client/offline-start.ts";
import { benchPropagation } from "./client/propagation.ts";
import { openSlowDevice, SLOWDOWN } from "./client/slow-device.ts";
import { benchWeekend } from "./client/weekend.ts";
import { describeMachine } from "./sync/machine.ts";

/** Prints the report; true when every bound is kept. */
export async function benchClient(): Promise<boolean> {
  const write = (text: string): void => void process.stdout.write(text);
  const { seasons, runsPerSeason, changesPerSeason } = demoHistory;
  write(
    `${describeMachine()}\nChromium at ${SLOWDOWN} times slowdown; ${demoRiders.length} riders with ${seasons} seasons `,
  );
  write(`of ${runsPerSeason} runs and ${changesPerSeason} changes each\n`);
  await build({ configFile: `${root}/vite.config.ts`, root: `${root}/client`, logLevel: "error" });
  const laptop = await startHistoryLaptop();
  try {
    const results = new Map<string, boolean>();
    results.set("first visit", await benchFirstVisit(write));
    const offline = await benchOfflineStart(laptop.port, write);
    results.set("offline cold start", offline.kept);
    const browser = await launchChromium();
    try {
      const origin = `http://127.0.0.1:${laptop.port}`;
      const mechanic = await openSlowDevice({ browser, origin, name: "Kim Larch", width: 1440, height: 900 });
      const phone = { width: 360, height: 740, hasTouch: true };
      const rider = await openSlowDevice({ browser, origin, name: "Rowan Alder", ...phone });
      results.set("interaction to next paint", await benchWeekend(mechanic, rider, write));
      results.set("painted on the other device", await benchPropagation(mechanic, rider, write));
      const after = [
        offline.after,
        await longTasksAfterStart("the mechanic's weekend", mechanic),
        await longTasksAfterStart("the rider's weekend", rider),
      ];
      results.set("long tasks", reportLongTasks(after, write));
      results.set("memory", await benchMemory(mechanic, laptop.port, write));
    } finally {
      await browser.close();
    }
    const missed = [...results].flatMap(([name, kept]) => (kept ? [] : [name]));
    write(missed.length === 0 ? "\nEvery bound is kept.\n" : `\nMissed: ${missed.join(", ")}.\n`);
    return missed.length === 0;
  } finally {
    await laptop.close();
  }
}
