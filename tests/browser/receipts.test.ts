/**
 * The mechanic sets a value while the rider is out of reach, and asks who has
 * not got it: the answer changes when the rider's phone has saved it, and stays
 * known when the mechanic starts without a network.
 */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { enterCourse } from "./enter-course.ts";
import { enter, type Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;
let mechanic: Person;
let rider: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.laptop);
  rider = await pits.open("Rowan Alder", screens.phone);
});

afterAll(() => pits?.close());

const entryOf = (value: RegExp) =>
  mechanic.page
    .locator(".pit-change")
    .filter({ hasText: value })
    .first()
    .getByText(/server|device/);

describe.sequential("receipts", () => {
  test("name who has not got the change while the rider's phone is out of reach", async () => {
    const { page } = mechanic;
    await rider.syncSays("On the server");
    await mechanic.syncSays("On the server");
    await page.getByRole("combobox", { name: "Weekend" }).selectOption({ label: "Kestrel Ridge Downhill" });
    await enterCourse(mechanic);
    await page.getByRole("link", { name: /Rowan Alder/ }).click();
    rider.network.cut();
    await rider.syncSays("Offline since");
    const row = page.locator(".pit-row").filter({ hasText: "Rebound" }).first();
    await row.locator("summary").click();
    await row.getByRole("button", { name: "Set another value" }).click();
    await enter(page, /^Value/, 9);
    await page.getByRole("button", { name: "It is on the bike", exact: true }).click();
    await mechanic.syncSays("On the server");
    await mechanic.sees(/^Not yet with .*Rowan Alder/);
    await entryOf(/9 clicks/)
      .getByText("On the server; no other device yet.")
      .waitFor();
  });

  test("name the rider as soon as his phone has said that it has saved it", async () => {
    rider.network.restore();
    await rider.syncSays("On the server");
    await mechanic.page.getByText("On the server, and with Rowan Alder.").first().waitFor();
    await mechanic.sees(/^Proven to be with .*Kim Larch.*Rowan Alder\.$/);
  });

  test("are still known after a start without a network", async () => {
    const { page } = mechanic;
    await page.evaluate(() => navigator.serviceWorker.ready);
    mechanic.network.cut();
    await page.reload();
    await mechanic.syncSays("Offline since");
    await mechanic.sees(/^Proven to be with .*Rowan Alder\.$/);
    expect(await page.getByText(/no other device yet/).count()).toBe(0);
  });
});
