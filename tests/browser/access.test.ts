/** Every screen against the rules of WCAG 2.2 A and AA, and the contrast of 7:1 (1.4.6, AAA), in every look. */
import axe, { type AxeResults, type RunOptions } from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { screens as devices } from "./pits.ts";
import { screens, show } from "./screens.ts";
import { openWorkedWeekend, type WorkedWeekend } from "./worked-weekend.ts";

const looks = ["sun", "dark", "forced colours"] as const;
const sizes = [
  ["phone", devices.phone],
  ["laptop", devices.laptop],
] as const;
/** The rules that a look can break: it changes colours and nothing else. */
const colourRules = ["color-contrast", "color-contrast-enhanced", "link-in-text-block"];
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

let worked: WorkedWeekend;

beforeAll(async () => {
  worked = await openWorkedWeekend();
});

afterAll(() => worked?.close());

test.for(screens)(
  "$name has no barrier on any device in any look, and stands still for whoever wants that",
  async (screen) => {
    const { page } = worked[screen.holder];
    await page.setViewportSize(devices.phone);
    await show(screen, worked);
    await page.evaluate(axe.source);
    for (const [device, size] of sizes) {
      await page.setViewportSize(size);
      for (const look of looks) {
        await put(page, look);
        expect(await barriers(page, look), `${device}, ${look}`).toEqual([]);
      }
    }
    await page.emulateMedia({ forcedColors: null, reducedMotion: "reduce" });
    expect(await moving(page)).toEqual([]);
    await page.emulateMedia({ reducedMotion: null });
  },
);

test("grey text, a small target and a field without a name are found", async () => {
  const page = await show({ name: "rules", holder: "mechanic", path: "/pit/rules" }, worked);
  await page.evaluate(axe.source);
  await put(page, "sun");
  await page.evaluate(() => {
    const bad = document.createElement("div");
    bad.innerHTML = `<p style="color:#666">grey</p><input><button style="all:unset;font-size:9px">a</button><button style="all:unset;font-size:9px">b</button>`;
    document.querySelector("main")?.append(bad);
  });
  const rules = (await barriers(page, "sun")).map((line) => line.split(":")[0]);
  expect(new Set(rules)).toEqual(new Set(["color-contrast-enhanced", "label", "target-size"]));
  await put(page, "dark");
  // Grey that is too light in the sun is below the lesser bound in the dark.
  expect((await barriers(page, "dark")).map((line) => line.split(":")[0])).toEqual(["color-contrast"]);
});

test("what moves is found, unless it is said that nothing shall", async () => {
  const { page } = worked.mechanic;
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.evaluate(() => {
    const slider = document.createElement("p");
    slider.id = "slider";
    slider.style.transition = "opacity 1s";
    document.body.append(slider);
  });
  expect(await moving(page)).toEqual([]);
  await page.emulateMedia({ reducedMotion: "no-preference" });
  expect(await moving(page)).toEqual(["p slider"]);
});

/** What has an animation, a transition or a smooth scroll. */
function moving(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("*")].flatMap((element) => {
      const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
      const isStill = animationName === "none" && /^0s(, 0s)*$/.test(transitionDuration) && scrollBehavior === "auto";
      return isStill && element.getAnimations().length === 0 ? [] : [`${element.localName} ${element.id}`];
    }),
  );
}

/** As the system, or the button of the shell, puts it. */
async function put(page: Page, look: (typeof looks)[number]): Promise<void> {
  await page.emulateMedia({ forcedColors: look === "forced colours" ? "active" : "none" });
  await page.evaluate(
    (theme) => {
      document.documentElement.dataset.theme = theme;
    },
    look === "dark" ? "dark" : "sun",
  );
}

/** What axe-core finds, a line each; in the sun by all its rules, in the other looks by those of colour. */
async function barriers(page: Page, look: (typeof looks)[number]): Promise<readonly string[]> {
  const options: RunOptions =
    look === "sun"
      ? {
          runOnly: { type: "tag", values: tags },
          rules: { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } },
        }
      : { runOnly: { type: "rule", values: colourRules } };
  const found = await page.evaluate((chosen): Promise<AxeResults> => {
    const { axe: injected } = globalThis as unknown as { axe: typeof axe };
    return injected.run(document, { ...chosen, resultTypes: ["violations"] });
  }, options);
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ""}`),
  );
}
