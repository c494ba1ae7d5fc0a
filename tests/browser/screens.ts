/** Every screen of the program, each with what has to be opened on it. A new screen is one line here. */
import type { Page } from "playwright-core";
import type { WorkedWeekend } from "./worked-weekend.ts";

export interface Screen {
  readonly name: string;
  /** Whose device shows it. */
  readonly holder: "mechanic" | "rider" | "manager";
  /** The workplaces for gloves, sun and rain ask for more than the others. */
  readonly room: "pit" | "trackside" | "elsewhere";
  readonly path: string;
  /** Brings into view what is not there at once. */
  readonly open?: (page: Page) => Promise<void>;
}

const weekend = "?weekend=kestrel-ridge-2026";
const bench = `/pit/rider/alder${weekend}`;
const press = (name: string | RegExp) => (page: Page) => page.getByRole("button", { name }).first().click();
const openAll = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });

export const screens: readonly Screen[] = [
  { name: "who are you", holder: "mechanic", room: "elsewhere", path: "/" },
  { name: "hand-off", holder: "mechanic", room: "elsewhere", path: "/hand-off" },
  { name: "hand over by codes", holder: "mechanic", room: "elsewhere", path: "/hand-off/hand-over" },
  { name: "take in by codes", holder: "mechanic", room: "elsewhere", path: "/hand-off/take-in" },
  { name: "data in and out", holder: "mechanic", room: "elsewhere", path: "/data" },
  { name: "team board", holder: "mechanic", room: "pit", path: `/pit${weekend}` },
  { name: "course", holder: "mechanic", room: "pit", path: `/pit/course${weekend}` },
  { name: "new weekend", holder: "mechanic", room: "pit", path: "/pit/weekend/new" },
  { name: "change of a weekend", holder: "mechanic", room: "pit", path: "/pit/weekend/kestrel-ridge-2026/edit" },
  { name: "rules", holder: "mechanic", room: "pit", path: "/pit/rules" },
  { name: "bench: setup", holder: "mechanic", room: "pit", path: bench },
  { name: "bench: all opened", holder: "mechanic", room: "pit", path: bench, open: openAll },
  {
    name: "bench: feedback",
    holder: "mechanic",
    room: "pit",
    path: `${bench}&view=feedback`,
    open: openAll,
  },
  {
    name: "bench: changelog",
    holder: "mechanic",
    room: "pit",
    path: `${bench}&view=changelog`,
    open: openAll,
  },
  {
    name: "bench: a service is written down",
    holder: "mechanic",
    room: "pit",
    path: bench,
    open: press(/^Service .*done/i),
  },
  { name: "trackside: start", holder: "rider", room: "trackside", path: `/trackside${weekend}`, open: openAll },
  { name: "trackside: run", holder: "rider", room: "trackside", path: `/trackside/run${weekend}`, open: openAll },
  { name: "trackside: change", holder: "rider", room: "trackside", path: `/trackside/change${weekend}` },
  {
    name: "trackside: new value",
    holder: "rider",
    room: "trackside",
    path: `/trackside/change${weekend}`,
    open: press(/^Rebound/),
  },
  { name: "review: matrix", holder: "manager", room: "elsewhere", path: "/review", open: openAll },
  { name: "review: rider", holder: "manager", room: "elsewhere", path: `/review/rider/alder${weekend}`, open: openAll },
  { name: "review: changelog", holder: "manager", room: "elsewhere", path: `/review/changelog${weekend}` },
];

/** Shows a screen on its holder's device. */
export async function show(screen: Screen, { [screen.holder]: person }: WorkedWeekend): Promise<Page> {
  const { page } = person;
  await page.goto(`${person.network.origin}${screen.path}`);
  await page.locator("main h1").first().waitFor();
  await screen.open?.(page);
  return page;
}
