/** A screen that is locked against rain takes nothing but a long press. */
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { screens as devices } from "./pits.ts";
import { openWorkedWeekend, type WorkedWeekend } from "./worked-weekend.ts";

let worked: WorkedWeekend;

beforeAll(async () => {
  worked = await openWorkedWeekend();
});

afterAll(() => worked?.close());

const hold = (page: Page): Locator => page.getByRole("button", { name: "Hold to open" });
const lock = (page: Page): Locator => page.getByRole("button", { name: "Rain lock" });

describe.each([
  ["a rider's bench", "mechanic", "/pit/rider/alder?weekend=kestrel-ridge-2026", "To set, in this order"],
  ["what is on the bike", "rider", "/trackside?weekend=kestrel-ridge-2026", "On the bike now"],
] as const)("%s", (_name, holder, path, heading) => {
  test("shows its values large, and drops all over it change nothing", async () => {
    const { page, network } = worked[holder];
    await page.setViewportSize(devices.phone);
    await page.goto(`${network.origin}${path}`);
    await lock(page).click();
    await page.getByRole("heading", { name: heading }).waitFor();
    const before = await page.locator("main").textContent();
    expect(
      await page.locator("main :is(a, button, input, select, textarea, summary)").filter({ visible: true }).count(),
    ).toBe(1);
    const sizes = await page
      .locator(".locked-value")
      .evaluateAll((values) => values.map((value) => Number.parseFloat(getComputedStyle(value).fontSize)));
    expect(sizes.length).toBeGreaterThan(5);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(44);
    for (let y = 10; y < devices.phone.height; y += 40)
      for (let x = 10; x < devices.phone.width; x += 50) await page.mouse.click(x, y);
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+/");
    await hold(page).press("Enter");
    await page.getByText("That was too short: hold it for a second.").waitFor();
    expect(new URL(page.url()).pathname).toBe(path.split("?")[0]);
    const after = await page.locator("main").textContent();
    expect(after?.replace("That was too short: hold it for a second.", "")).toBe(
      before?.replace("Locked against rain: values only, nothing here can be changed.", ""),
    );
  });

  test("opens to a long press of the pointer and of a key", async () => {
    const { page } = worked[holder];
    await hold(page).hover();
    await page.mouse.down();
    await lock(page).waitFor();
    await page.mouse.up();
    await lock(page).press("Enter");
    await hold(page).waitFor();
    await page.keyboard.down("Space");
    await lock(page).waitFor();
    // The key goes on repeating on what has the focus now.
    await page.keyboard.down("Space");
    await page.keyboard.up("Space");
    expect(await lock(page).evaluate((button) => button === document.activeElement)).toBe(true);
  });

  test("opens to a press without finger and key only when it is confirmed", async () => {
    const { page } = worked[holder];
    await lock(page).click();
    await hold(page).evaluate((button: HTMLButtonElement) => button.click());
    await page.getByRole("button", { name: "Open the screen" }).click();
    await lock(page).waitFor();
  });
});
