/** Scrolling with a finger that happens to lie on a stepper, and the wheel over a field, change no value. */
import type { CDPSession, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Screen, screens, show } from "./screens.ts";
import { openWorkedWeekend, type WorkedWeekend } from "./worked-weekend.ts";

let worked: WorkedWeekend;
let touch: CDPSession;

beforeAll(async () => {
  worked = await openWorkedWeekend();
  const { page } = worked.rider;
  touch = await page.context().newCDPSession(page);
});

afterAll(() => worked?.close());

/** A finger goes down on the middle of a control, moves up in steps, and leaves. */
async function drag(control: Locator, stepsPx: readonly number[]): Promise<void> {
  await control.evaluate((element) => element.scrollIntoView({ block: "center", behavior: "instant" }));
  const box = await control.boundingBox();
  if (!box) throw new Error(`${control} is not in view.`);
  const x = box.x + box.width / 2;
  let y = box.y + box.height / 2;
  await touch.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x, y }] });
  for (const px of stepsPx) {
    y -= px;
    await touch.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [{ x, y }] });
  }
  await touch.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}

/** A machine that stands still for 400 ms in the midst of a drag would make a hold of it; when that repeats is tested with its own clock. */
async function stopHolds(page: Page): Promise<void> {
  await page.evaluate(() => {
    Object.assign(globalThis, { setTimeout: () => 0 });
  });
}

const steppers = (page: Page): Locator => page.locator(".stepper > button, .stepper input");
const values = (page: Page): Promise<readonly string[]> =>
  page.getByRole("spinbutton").evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value));
const named = (name: string): Screen => {
  const found = screens.find((screen) => screen.name === name);
  if (!found) throw new Error(`There is no screen "${name}".`);
  return { ...found, holder: "rider" };
};

describe.each(["course", "trackside: run", "trackside: new value"])("on the screen %s", (name) => {
  test("a scroll drag over every stepper changes nothing", async () => {
    const page = await show(named(name), worked);
    const before = await values(page);
    await stopHolds(page);
    const controls = await steppers(page).all();
    expect(controls.length).toBeGreaterThanOrEqual(3);
    for (const control of controls) {
      await drag(control, [4, 12, 40, 40]);
      await drag(control, [-4, -12, -40]);
    }
    expect(await values(page)).toEqual(before);
  });

  test("the wheel over a field that is being typed in changes nothing", async () => {
    const page = await show(named(name), worked);
    const before = await values(page);
    for (const field of await page.getByRole("spinbutton").all()) {
      await field.focus();
      await field.hover();
      await page.mouse.wheel(0, 120);
      await page.mouse.wheel(0, -120);
    }
    expect(await values(page)).toEqual(before);
  });

  test("a finger that stays where it is does step", async () => {
    const page = await show(named(name), worked);
    const before = await values(page);
    await drag(page.getByRole("button", { name: /Up by one step/ }).last(), [4]);
    expect(await values(page)).not.toEqual(before);
  });
});
