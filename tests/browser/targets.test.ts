/** On every screen everything can be hit with gloves on: 48 px, 64 px for steps and main acts, 12 px between them. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { targetsToMend } from "./measure-targets.ts";
import { screens as devices } from "./pits.ts";
import { screens, show } from "./screens.ts";
import { openWorkedWeekend, type WorkedWeekend } from "./worked-weekend.ts";

let worked: WorkedWeekend;

beforeAll(async () => {
  worked = await openWorkedWeekend();
});

afterAll(() => worked?.close());

test.for(screens)("$name has targets for gloves on every device", async (screen) => {
  const page = await show(screen, worked);
  for (const [device, size] of Object.entries(devices)) {
    await page.setViewportSize(size);
    expect(await targetsToMend(page), device).toEqual([]);
  }
});

test("a small target, a small step and two close targets are found", async () => {
  const page = await show({ name: "rules", holder: "mechanic", path: "/pit/rules" }, worked);
  await page.evaluate(() => {
    const bad = document.createElement("div");
    bad.style.cssText = "position: absolute; top: 3000px";
    bad.innerHTML = `<button style="all:unset;width:40px;height:60px;display:block">low</button>
      <div style="height:30px"></div><button class="main" style="all:unset;width:70px;height:50px;display:block">main</button>
      <div style="height:6px"></div><button style="width:70px;height:50px">close</button>`;
    document.body.append(bad);
  });
  expect(await targetsToMend(page)).toEqual([
    'button "low": 40 by 60 px, below 48',
    'button.main "main": 70 by 50 px, below 64',
    'button.main "main" and button "close": 6 px apart',
  ]);
});
