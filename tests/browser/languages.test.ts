/** Every language on the narrowest phone: long words are what breaks a screen. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { languages } from "#client/text/language.ts";
import { enterCourse } from "./enter-course.ts";
import type { Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;

beforeAll(async () => {
  pits = await openPits();
  const mechanic = await pits.open("Kim Larch", screens.laptop);
  await mechanic.page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
  await enterCourse(mechanic);
});

afterAll(() => pits?.close());

/** Width of the page at `path` in CSS pixels, once `sign` of its screen stands. */
async function widthOf({ page }: Pick<Person, "page">, path: string, sign: string): Promise<number> {
  await page.goto(new URL(path, page.url()).href);
  await page.locator(sign).first().waitFor();
  return pageWidth({ page });
}

function pageWidth({ page }: Pick<Person, "page">): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth);
}

const pitScreens = {
  "/pit": "main select",
  "/pit/course": "[role=spinbutton]",
  "/pit/rules": "article.card",
  "/pit/weekend/new": "main input",
  "/": "button[lang]",
};
const tracksideScreens = {
  "/trackside": "main a",
  "/trackside/run": ".rest-good",
  "/trackside/change": ".adjuster-button",
};

describe.each(languages)("a phone whose owner reads %s", (language) => {
  test("speaks it, marks it where it is chosen, and scrolls no screen sideways", async () => {
    const mechanic = await pits.open("Kim Larch", { ...screens.phone, locale: language });
    expect(await mechanic.page.locator("html").getAttribute("lang")).toBe(language);
    await mechanic.page.locator("main select").first().selectOption({ label: "Kestrel Ridge Downhill" });
    await mechanic.page.getByRole("link", { name: /Rowan Alder/ }).click();
    await mechanic.page.locator(".pit-step").first().waitFor();
    expect(await pageWidth(mechanic)).toBe(screens.phone.width);
    for (const [path, sign] of Object.entries(pitScreens)) {
      expect(await widthOf(mechanic, path, sign), path).toBe(screens.phone.width);
    }
    expect(await mechanic.page.locator("button[lang][aria-pressed=true]").getAttribute("lang")).toBe(language);

    const rider = await pits.open("Rowan Alder", { ...screens.phone, locale: language });
    for (const [path, sign] of Object.entries(tracksideScreens)) {
      expect(await widthOf(rider, path, sign), path).toBe(screens.phone.width);
    }
  });
});
