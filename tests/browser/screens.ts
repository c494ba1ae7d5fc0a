/** Every screen of the program, each with what has to be opened on it. A new screen is one line here. */
import type { Page } from "playwright-core";
import type { WorkedWeekend } from "./worked-weekend.ts";

export interface Screen {
  readonly name: string;
  /** Whose device shows it. */
  readonly holder: "mechanic" | "rider" | "manager";
  readonly path: string;
  /** Brings into view what is not there at once. */
  readonly open?: (page: Page) => Promise<void>;
}

const weekend = "?weekend=kestrel-ridge-2026";
const bench = `/pit/rider/alder${weekend}`;
const press = (name: string | RegExp) => (page: Page) => page.getByRole("button", { name }).first().click();
/** What is folded away may be made only once the browser has said that it was opened. */
const openAll = (page: Page) =>
  page.evaluate(async () => {
    for (const details of document.querySelectorAll("details")) details.open = true;
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
  });

const lookFor = async (page: Page, words: string): Promise<void> => {
  await page.getByRole("textbox", { name: "Words" }).fill(words);
  await page.getByRole("link", { name: /^Rider / }).waitFor();
};

export const screens: readonly Screen[] = [
  { name: "who are you", holder: "mechanic", path: "/" },
  { name: "hand-off", holder: "mechanic", path: "/hand-off" },
  { name: "hand over by codes", holder: "mechanic", path: "/hand-off/hand-over" },
  { name: "take in by codes", holder: "mechanic", path: "/hand-off/take-in" },
  { name: "data in and out", holder: "mechanic", path: "/data" },
  { name: "team board", holder: "mechanic", path: `/pit${weekend}` },
  { name: "course", holder: "mechanic", path: `/pit/course${weekend}` },
  { name: "course: all opened", holder: "mechanic", path: `/pit/course${weekend}`, open: openAll },
  { name: "bikes", holder: "mechanic", path: `/pit/rider/alder/bikes${weekend}`, open: openAll },
  { name: "find", holder: "mechanic", path: "/find", open: (page) => lookFor(page, "rowan") },
  { name: "print: setup sheet", holder: "mechanic", path: `/print/rider/alder${weekend}` },
  { name: "print: session sheet", holder: "mechanic", path: `/print/team${weekend}` },
  { name: "print: weekend report", holder: "manager", path: `/print/weekend${weekend}` },
  { name: "new weekend", holder: "mechanic", path: "/pit/weekend/new" },
  { name: "change of a weekend", holder: "mechanic", path: "/pit/weekend/kestrel-ridge-2026/edit" },
  { name: "rules", holder: "mechanic", path: "/pit/rules" },
  { name: "bench: setup", holder: "mechanic", path: bench },
  { name: "bench: all opened", holder: "mechanic", path: bench, open: openAll },
  {
    name: "bench: feedback",
    holder: "mechanic",
    path: `${bench}&view=feedback`,
    open: openAll,
  },
  {
    name: "bench: changelog",
    holder: "mechanic",
    path: `${bench}&view=changelog`,
    open: openAll,
  },
  {
    name: "bench: a service is written down",
    holder: "mechanic",
    path: bench,
    open: press(/^Service .*done/i),
  },
  { name: "bench: locked against rain", holder: "mechanic", path: bench, open: press("Rain lock") },
  { name: "trackside: locked against rain", holder: "rider", path: `/trackside${weekend}`, open: press("Rain lock") },
  { name: "trackside: start", holder: "rider", path: `/trackside${weekend}`, open: openAll },
  { name: "trackside: run", holder: "rider", path: `/trackside/run${weekend}`, open: openAll },
  { name: "trackside: change", holder: "rider", path: `/trackside/change${weekend}` },
  {
    name: "trackside: new value",
    holder: "rider",
    path: `/trackside/change${weekend}`,
    open: press(/^Rebound/),
  },
  { name: "review: matrix", holder: "manager", path: "/review", open: openAll },
  { name: "review: rider", holder: "manager", path: `/review/rider/alder${weekend}`, open: openAll },
  { name: "review: changelog", holder: "manager", path: `/review/changelog${weekend}` },
];

/** Shows a screen on its holder's device. */
export async function show(screen: Screen, { [screen.holder]: person }: WorkedWeekend): Promise<Page> {
  const { page } = person;
  await page.goto(`${person.network.origin}${screen.path}`);
  await page.locator("main h1").first().waitFor();
  // The riders' jobs come one rider a turn, and rows that have just moved take no touch for a moment.
  await page.waitForFunction(() => document.querySelector('[aria-busy="true"], .pit-jobs-settling') === null);
  await screen.open?.(page);
  return page;
}
