/**
 * One race weekend in real browsers against a real server: the mechanic at the
 * pit laptop, a rider on a phone, the manager on a tablet, each with a network
 * of his own that is cut in the middle.
 */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { enter, type Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;
let mechanic: Person;
let rider: Person;
let manager: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.laptop);
  rider = await pits.open("Rowan Alder", screens.phone);
  manager = await pits.open("Lou Heather", screens.tablet);
});

afterAll(() => pits?.close());

const button = (person: Person, name: string | RegExp) => person.page.getByRole("button", { name }).first();
const section = (person: Person, heading: string | RegExp) =>
  person.page
    .locator("section")
    .filter({ has: person.page.getByRole("heading", { name: heading }) })
    .last();

describe.sequential("a race weekend", () => {
  test("the mechanic enters the course; a mix that does not add up is refused and nothing typed is lost", async () => {
    const { page } = mechanic;
    await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
    await page.getByRole("link", { name: "Enter course and conditions" }).click();
    await enter(page, /^Steep/, "0,6");
    await enter(page, /^Jumpy/, 0.3);
    await enter(page, /^Wet/, 0.3);
    await enter(page, /^Altitude/, 1950);
    for (const [session, air, bench] of [
      ["Practice 1", 22, 12],
      ["Practice 2", 24, 14],
      ["Qualifying", 25, 15],
      ["Race", 26, 16],
    ] as const) {
      await enter(page, `${session}: Air at the session (°C)`, air);
      await enter(page, `${session}: Air at the bench (°C)`, bench);
      await section(mechanic, session).getByText("dry dust", { exact: true }).click();
    }
    await page.getByRole("button", { name: "Save" }).click();
    await mechanic.sees(/must add up to 1, not 1.2/);
    expect(await page.getByRole("spinbutton", { name: /^Altitude/ }).inputValue()).toBe("1950");
    await enter(page, /^Wet/, 0.1);
    await page.getByRole("button", { name: "Save" }).click();
    await mechanic.sees("steep 0.6, jumpy 0.3, wet 0.1");
  });

  test("every rider has a setup with reasons, and ticking it off writes the changelog", async () => {
    const { page } = mechanic;
    await expect.poll(() => page.getByText(/\d+ adjusters to set/).count()).toBe(8);
    await page.getByRole("link", { name: /Rowan Alder/ }).click();
    await mechanic.sees("Setup sheet");
    await page
      .getByText(/^Why: \d+ reasons/)
      .first()
      .click();
    await mechanic.sees(/blend of own baselines/i);
    await mechanic.sees(/Gas is under pressure/);
    const steps = await page.getByRole("button", { name: /: on the bike$/ }).count();
    expect(steps).toBeGreaterThan(5);
    await page
      .getByRole("button", { name: /: on the bike$/ })
      .first()
      .dblclick();
    // A glove that trembles touches twice: the step that has moved up is not ticked by it.
    await mechanic.sees(/^On the bike: Fork/);
    await mechanic.has("Changelog (1)");
    await page.getByRole("button", { name: "All of it is on the bike" }).click();
    await mechanic.sees("Nothing is left to set by the sheet.");
    await mechanic.has(`Changelog (${steps})`);
    await mechanic.syncSays("On the server");
  });

  test("the rider logs a run in at most 12 taps without typing, and the mechanic sees it arrive", async () => {
    const { page } = rider;
    const started = Date.now();
    await page.goto(`${rider.network.origin}/trackside?weekend=kestrel-ridge-2026`);
    const before = rider.taps();
    await rider.tap(page.getByRole("link", { name: "Log a run" }));
    const front = section(rider, "Front");
    await rider.tap(front.getByText("never reached", { exact: true }));
    await rider.tap(front.getByText("too slow", { exact: true }));
    await rider.tap(front.getByRole("button", { name: "Front: the rest was good" }));
    const rear = section(rider, "Rear");
    await rider.tap(rear.getByText("dives", { exact: true }));
    await rider.tap(rear.getByRole("button", { name: "Rear: the rest was good" }));
    await rider.tap(page.getByText("fair", { exact: true }));
    await rider.tap(page.getByRole("button", { name: "Save the run" }));
    await rider.sees(/^Saved at .*run in Practice 1/);
    const taps = rider.taps() - before;
    process.stdout.write(`A full run log: ${taps} taps, ${((Date.now() - started) / 1000).toFixed(1)} s by machine.\n`);
    expect(taps).toBeLessThanOrEqual(12);
    await mechanic.has("Feedback (1)");
  });

  test("the mechanic takes the first adjustment; the changelog says who, from what to what, why and for which run", async () => {
    const { page } = mechanic;
    await mechanic.sees("First adjustment");
    await mechanic.sees("Fork secondary pressure");
    await page.getByRole("button", { name: "Put it on the bike" }).first().click();
    const changelog = section(mechanic, "Changelog");
    await changelog
      .getByText(/Answers the run: Practice 1/)
      .first()
      .waitFor();
    await changelog
      .getByText(/The rider says that the end of the stroke is never reached/)
      .first()
      .waitFor();
    await changelog.getByText("Kim Larch").first().waitFor();
    await rider.sees("The mechanic changed the bike.");
    await rider.sees("What to notice on the next run");
  });

  test("undoing that change is one action, and is itself in the changelog", async () => {
    const changelog = section(mechanic, "Changelog");
    const before = await mechanic.page
      .getByText(/^Changelog \(\d+\)$/)
      .first()
      .textContent();
    await mechanic.page
      .getByRole("button", { name: /^Undo: / })
      .first()
      .click();
    await changelog.getByText("Undone: back to the value before.").first().waitFor();
    expect(
      await mechanic.page
        .getByText(/^Changelog \(\d+\)$/)
        .first()
        .textContent(),
    ).not.toBe(before);
  });

  test("with the network cut, two devices set the same adjuster, and both go on", async () => {
    mechanic.network.cut();
    rider.network.cut();
    await mechanic.syncSays("Offline since");
    await rider.syncSays("Offline since");

    await rider.tap(rider.page.getByRole("link", { name: "I changed something myself" }));
    await rider.tap(section(rider, "Fork").getByRole("button", { name: /^Rebound/ }));
    await rider.tap(rider.page.getByRole("button", { name: /Up by one step/ }));
    await rider.tap(button(rider, "Save the change"));
    await rider.sees(/Saved: .*reported by you/);
    await rider.syncSays("Offline since");

    const row = mechanic.page
      .locator("li.pit-row")
      .filter({ has: mechanic.page.getByRole("heading", { name: "Rebound" }) })
      .first();
    await row.locator("summary").click();
    await row.getByRole("button", { name: "Set another value" }).click();
    const dialog = mechanic.page.getByRole("dialog");
    await dialog.getByRole("button", { name: /Down by one step/ }).click();
    await dialog.getByRole("button", { name: "It is on the bike" }).click();
    await mechanic.sees(/^Set by hand: Fork rebound/);
    await mechanic.syncSays("Offline since");
  });

  test("when it returns, both show both values with author and time, and a person says what is on the bike", async () => {
    mechanic.network.restore();
    rider.network.restore();
    await mechanic.sees(/In dispute: Fork rebound/);
    await mechanic.sees("Rowan Alder says");
    await mechanic.sees("Kim Larch says");
    await rider.page.goto(`${rider.network.origin}/trackside`);
    await rider.sees(/In dispute: two people say different things/);
    await rider.sees(/says Kim Larch/);
    await rider.sees(/says Rowan Alder/);
    await button(mechanic, /^It is \d+ clicks?$/).click();
    await mechanic.page
      .getByText(/In dispute: Fork rebound/)
      .first()
      .waitFor({ state: "detached" });
    await mechanic.syncSays("On the server");
    await rider.page
      .getByText(/In dispute/)
      .first()
      .waitFor({ state: "detached" });
  });

  test("the manager makes the weekend's setup the new baseline, and the old version stays readable", async () => {
    const { page } = manager;
    await manager.sees("Baselines by rider and course type");
    await page
      .getByRole("link", { name: /Rowan Alder, steep/ })
      .first()
      .click();
    await manager.sees("This weekend against the baseline");
    await page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
    await manager.sees(/adjusters? differs? from the baseline/);
    await page.getByRole("button", { name: "Make it the baseline for steep" }).click();
    await manager.sees("Approved: it is version 2 of the baseline for steep.");
    await manager.sees("Version 1");
    await manager.sees("Version 2");
    await manager.syncSays("On the server");
  });

  test("a device that is opened again while the laptop is out of reach has everything, and can write", async () => {
    const { page } = mechanic;
    await page.getByRole("link", { name: "Back to the team" }).click();
    await mechanic.sees(/steep 0.6, jumpy 0.3, wet 0.1/i);
    // The program's own copy is used from the next load on that finds it in charge.
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.reload();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    mechanic.network.cut();
    await mechanic.syncSays("Offline since");
    await page.reload();
    await mechanic.sees(/steep 0.6, jumpy 0.3, wet 0.1/i);
    await mechanic.syncSays("Offline since");
    await page.getByRole("link", { name: /Bo Linden/ }).click();
    await page.getByRole("button", { name: "All of it is on the bike" }).click();
    await mechanic.sees("Nothing is left to set by the sheet.");
    await mechanic.syncSays("Offline since");
    mechanic.network.restore();
    await mechanic.syncSays("On the server");
  });
});
