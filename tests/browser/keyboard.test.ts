/** Everything by the keyboard alone: where Tab leads on every screen, and the mechanic's main work. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { screens as devices } from "./pits.ts";
import { screens, show } from "./screens.ts";
import { tabRound, tabTo } from "./tab-stops.ts";
import { openWorkedWeekend, type WorkedWeekend } from "./worked-weekend.ts";

let worked: WorkedWeekend;

beforeAll(async () => {
  worked = await openWorkedWeekend();
});

afterAll(() => worked?.close());

describe.each([
  ["phone", devices.phone],
  ["laptop", devices.laptop],
])("on the %s", (_device, size) => {
  test.for(screens)("$name is reached by Tab, in the order of the page, with the focus in view", async (screen) => {
    await worked[screen.holder].page.setViewportSize(size);
    const page = await show(screen, worked);
    // Until then the line of the sync has a link more.
    await worked[screen.holder].syncSays("On the server");
    const round = await tabRound(page);
    expect(round).toEqual({ count: round.count, missed: [], outOfOrder: [], unmarked: [], hidden: [] });
    expect(round.count).toBeGreaterThan(0);
  });
});

test("the mechanic's work at a bench by keys alone: tick, undo, set by hand, leave the dialog", async () => {
  const { mechanic } = worked;
  const { page } = mechanic;
  const { keyboard } = page;
  await page.setViewportSize(devices.laptop);
  await page.goto(mechanic.network.origin);
  await tabTo(page, page.getByRole("button", { name: "Kim Larch", exact: true }));
  await keyboard.press("Enter");
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.getByLabel("Weekend").focus();
  await keyboard.type("Kestrel");
  await mechanic.sees(/steep 0.6/i);
  await tabTo(page, page.getByRole("link", { name: /Bo Linden/ }));
  await keyboard.press("Enter");
  await mechanic.sees("Setup sheet");

  const ticks = page.getByRole("button", { name: /: on the bike$/ });
  const steps = await ticks.count();
  await tabTo(page, ticks.first());
  await keyboard.press("Space");
  await mechanic.sees(/^On the bike: /);
  expect(await ticks.count()).toBe(steps - 1);
  await keyboard.press("Control+z");
  await mechanic.sees(/^Undone: /);
  expect(await ticks.count()).toBe(steps);

  await tabTo(page, page.locator("li.pit-row summary").first());
  await keyboard.press("Enter");
  const opener = page.getByRole("button", { name: "Set another value" }).first();
  const hasFocus = (element: Element): boolean => element === document.activeElement;
  await tabTo(page, opener);
  await keyboard.press("Enter");
  const dialog = page.getByRole("dialog");
  await dialog.waitFor();
  const round = await tabRound(page);
  expect(round).toEqual({ count: 7, missed: [], outOfOrder: [], unmarked: [], hidden: [] });
  await keyboard.press("Escape");
  await dialog.waitFor({ state: "detached" });
  expect(await opener.evaluate(hasFocus)).toBe(true);

  await keyboard.press("Enter");
  await tabTo(page, dialog.getByRole("spinbutton"));
  await keyboard.press("ArrowDown");
  await keyboard.press("Control+z");
  await tabTo(page, dialog.getByRole("button", { name: "It is on the bike" }));
  await keyboard.press("Enter");
  await mechanic.sees(/^Set by hand: /);
  expect(await opener.evaluate(hasFocus)).toBe(true);
  await keyboard.press("Meta+z");
  await mechanic.sees(/^Undone: /);
});
