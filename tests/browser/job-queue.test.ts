/** The pit opens on the jobs of the whole team: done in one touch, undone in one, with a countdown to the day's sessions. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { enterCourse } from "./enter-course.ts";
import type { Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

let pits: Pits;
let mechanic: Person;
let second: Person;

beforeAll(async () => {
  pits = await openPits();
  mechanic = await pits.open("Kim Larch", screens.phone);
  // An hour and 25 minutes before the first session of the weekend, on the phone's own clock.
  await mechanic.page.clock.install({ time: new Date("2026-06-12T08:35:00") });
  await mechanic.page.reload();
  second = await pits.open("Dee Rush", screens.laptop);
});

afterAll(() => pits?.close());

const jobs = ({ page }: Person) => page.locator("li.pit-job");
const jobOf = (person: Person, rider: string) =>
  jobs(person).filter({ has: person.page.getByRole("heading", { name: rider }) });

describe.sequential("the job queue", () => {
  test("is what the pit opens on, with the weekend that is going on and the time to each session of the day", async () => {
    const { page } = mechanic;
    await page.getByRole("heading", { name: "What to do next" }).waitFor();
    const countdown = page.getByRole("region", { name: "Sessions" });
    await countdown.getByText("starts in 1 hr 25 mins").waitFor();
    expect(await countdown.getByRole("listitem").count()).toBe(2);
    await page.clock.fastForward("01:00");
    await countdown.getByText("starts in 1 hr 24 mins").waitFor();
    expect(await page.locator("[aria-live] time, time[aria-live]").count()).toBe(0);
    await enterCourse(mechanic);
    await expect.poll(() => jobs(mechanic).count()).toBe(8);
    await jobs(mechanic).first().getByText("Until Practice 1, Fri 12 Jun, 10:00").waitFor();
  });

  test("does a job in one touch, for everybody, and undoes it in one, in the same place", async () => {
    const job = jobOf(mechanic, "Rowan Alder");
    await mechanic.tap(job.getByRole("button", { name: "It is all on the bike" }));
    await job.getByText(/^Done: \d+ settings on the bike/).waitFor();
    await mechanic.syncSays("On the server");
    await second.page.getByLabel("Weekend").selectOption({ label: "Kestrel Ridge Downhill" });
    await second.sees("For Kestrel Ridge Downhill: Practice 1");
    await jobOf(second, "Bo Linden").waitFor();
    expect(await jobOf(second, "Rowan Alder").count()).toBe(0);
    const undo = job.getByRole("button", { name: "Undo" });
    expect(await undo.evaluate((element) => element === document.activeElement)).toBe(true);
    await mechanic.page.clock.fastForward(1000);
    await undo.press("Enter");
    await job.getByText(/^\d+ adjusters to set$/).waitFor();
    await jobOf(second, "Rowan Alder").waitFor();
    expect(await job.getByRole("button", { name: "It is all on the bike" }).count()).toBe(1);
  });

  test("leads to every rider's bench and back", async () => {
    const { page } = mechanic;
    await mechanic.tap(page.getByRole("link", { name: "To the riders" }));
    await mechanic.tap(page.getByRole("link", { name: /Bo Linden/ }));
    await page.waitForURL(/\/pit\/rider\/linden/);
    await mechanic.tap(page.getByRole("link", { name: "Back to the team" }));
    await jobOf(mechanic, "Bo Linden").waitFor();
  });

  test("has main touches of 64 px, others of 48 px, 12 px between, and nothing beyond the edge of a phone", async () => {
    const { page } = mechanic;
    await expect.poll(() => jobs(mechanic).count()).toBeGreaterThanOrEqual(8);
    const boxes = await page.locator("li.pit-job :is(button, a, summary)").evaluateAll((controls) =>
      controls.map((control) => {
        const { top, bottom, height, width } = control.getBoundingClientRect();
        return { top, bottom, height, width, least: control.classList.contains("main") ? 64 : 48 };
      }),
    );
    expect(boxes.length).toBeGreaterThan(16);
    for (const { height, width, least } of boxes) {
      expect(height).toBeGreaterThanOrEqual(least);
      expect(width).toBeGreaterThanOrEqual(48);
    }
    for (const [index, { top }] of boxes.slice(1).entries()) {
      expect(top - (boxes[index]?.bottom ?? 0)).toBeGreaterThanOrEqual(12);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });
});
