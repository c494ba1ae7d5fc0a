/** From the mechanic's press until the rider's phone has painted what it changed. */
import type { Page } from "playwright-core";
import { describe, line, quartiles } from "../measure.ts";
import { painted } from "./page-watch.ts";
import type { SlowDevice } from "./slow-device.ts";

const MOST_MS = 150;
const CHANGES = 16;

/** Prints the report; the mechanic is on the bench of the rider whose phone it is, and both devices are slow. */
export async function benchPropagation(
  mechanic: SlowDevice,
  rider: SlowDevice,
  write: (text: string) => void,
): Promise<boolean> {
  await mechanic.page.evaluate(() => {
    // Since the press itself, not since the page got round to it.
    const note = (event: Event) => Reflect.set(window, "pressedAt", performance.timeOrigin + event.timeStamp);
    window.addEventListener("click", note, { capture: true });
  });
  const times: number[] = [];
  for (let change = 0; change < CHANGES; change += 1) {
    await painted(rider.page);
    await openFork(mechanic.page, change % 2 === 0 ? /Up by one step/ : /Down by one step/);
    await watchBike(rider.page);
    await mechanic.page.getByRole("dialog").getByRole("button", { name: "It is on the bike" }).click();
    const paintedAt = await rider.page.evaluate(() => Reflect.get(window, "bikePainted") as Promise<number>);
    times.push(paintedAt - (await mechanic.page.evaluate(() => Reflect.get(window, "pressedAt") as number)));
  }
  const measured = quartiles(times);
  const kept = measured.median <= MOST_MS;
  write(`\nA change painted on the other device, ${CHANGES} changes, both on this machine\n`);
  write(line("from the press until it is painted", describe(measured), { text: `at most ${MOST_MS} ms`, kept }));
  return kept;
}

/** The dialog of the fork's rebound, one step from the value on the bike. */
async function openFork(page: Page, step: RegExp): Promise<void> {
  const row = page
    .locator("li.pit-row")
    .filter({ has: page.getByRole("heading", { name: "Rebound" }) })
    .first();
  await row.getByRole("button", { name: "Set another value" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: step }).click();
  await painted(page);
}

/** Begins to wait for other values on the bike; the page keeps the promise of the moment in which they are painted. */
function watchBike(page: Page): Promise<void> {
  return page.evaluate(() => {
    const values = () => [...document.querySelectorAll(".bike-values")].map((list) => list.textContent).join("\n");
    const before = values();
    const change = new Promise<number>((resolve) => {
      const observer = new MutationObserver(() => {
        if (values() === before) return;
        observer.disconnect();
        requestAnimationFrame(() => resolve(performance.timeOrigin + performance.now()));
      });
      observer.observe(document.body, { childList: true, characterData: true, subtree: true });
    });
    Reflect.set(window, "bikePainted", change);
  });
}
