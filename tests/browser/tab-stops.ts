/** Where the Tab key leads. */
import type { Locator, Page } from "playwright-core";

/** What was wrong on the way round, each a list of names. */
export interface TabRound {
  readonly count: number;
  /** What acts, but is not reached; of choices of one kind, one is enough. */
  readonly missed: readonly string[];
  /** Stops that come before one that stands above them in the page. */
  readonly outOfOrder: readonly string[];
  /** Stops without an outline of 3 px or more, on them or on the label that stands for them. */
  readonly unmarked: readonly string[];
  /** Stops that are wholly off the screen or behind a bar. */
  readonly hidden: readonly string[];
}

/** Stops of the round, kept in the page: what they are stays true while the page changes around them. */
interface Walk {
  readonly stops: Element[];
  readonly unmarked: string[];
  readonly hidden: string[];
  nameOf(element: Element): string;
}

/** Presses Tab until it comes round. */
export async function tabRound(page: Page): Promise<TabRound> {
  await page.evaluate(begin);
  let outside = 0;
  for (;;) {
    await page.keyboard.press("Tab");
    const went = await page.evaluate(step);
    // Past the last stop the browser itself has the focus once; a page without stops gives it nothing else.
    outside = went === "outside" ? outside + 1 : 0;
    if (went === "round" || outside > 3) return page.evaluate(judge);
  }
}

/** Presses Tab until `control` has the focus, at most `most` times. */
export async function tabTo(page: Page, control: Locator, most = 120): Promise<void> {
  for (let presses = 0; presses < most; presses += 1) {
    await page.keyboard.press("Tab");
    if (await control.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`${most} presses of Tab did not reach ${control}.`);
}

function begin(): void {
  const walk: Walk = {
    stops: [],
    unmarked: [],
    hidden: [],
    nameOf: (element) =>
      `${element.localName} ${(element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 60)}`,
  };
  Object.assign(globalThis, { walk });
}

function step(): "outside" | "round" | "on" {
  const { walk } = globalThis as unknown as { walk: Walk };
  const element = document.activeElement;
  if (!element || element === document.body) return "outside";
  // The parts of a date are stops of one field.
  if (element === walk.stops.at(-1) && element.matches("[type=date], [type=time]")) return "on";
  if (walk.stops.includes(element)) return "round";
  walk.stops.push(element);
  const shown = getComputedStyle(element).opacity === "0" ? (element.closest("label") ?? element) : element;
  const { outlineStyle, outlineWidth } = getComputedStyle(shown);
  if (outlineStyle === "none" || Number.parseFloat(outlineWidth) < 3) walk.unmarked.push(walk.nameOf(element));
  const { left, width, top, height } = shown.getBoundingClientRect();
  const isSeen = [0.1, 0.5, 0.9].some((x) =>
    [0.1, 0.5, 0.9].some((y) => {
      const hit = document.elementFromPoint(left + width * x, top + height * y);
      return hit !== null && shown.contains(hit);
    }),
  );
  if (!isSeen) walk.hidden.push(walk.nameOf(element));
  return "on";
}

function judge(): TabRound {
  const { walk } = globalThis as unknown as { walk: Walk };
  const { stops, unmarked, hidden, nameOf } = walk;
  const isBefore = (one: Element, other: Element): boolean =>
    (one.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  const groups = stops.flatMap((stop) =>
    stop instanceof HTMLInputElement && stop.type === "radio" ? [stop.name] : [],
  );
  const acting = "a[href], button, input, select, textarea, summary, [tabindex='0']";
  const missed = [...(document.querySelector("dialog[open]") ?? document).querySelectorAll(acting)]
    .filter(
      (element) => element.checkVisibility({ visibilityProperty: true }) && !element.matches(":disabled, [inert] *"),
    )
    .filter((element) => !stops.includes(element))
    .filter((element) => !(element instanceof HTMLInputElement && groups.includes(element.name)));
  // The round began somewhere: once it goes on from the last to the first.
  const back = stops.filter((stop, index) => {
    const next = stops[(index + 1) % stops.length];
    return next !== undefined && next !== stop && isBefore(next, stop);
  });
  const outOfOrder = back.length > 1 ? back.map(nameOf) : [];
  return { count: stops.length, missed: missed.map(nameOf), outOfOrder, unmarked, hidden };
}
