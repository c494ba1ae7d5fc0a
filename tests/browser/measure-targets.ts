/** What a finger in a wet glove has to hit, measured in the page as it is laid out. */
import type { Page } from "playwright-core";

/** Steps of a number and the acts that a screen is for. */
const large = ".main, .stepper > button, .stepper input, .pit-tick, .rest-good, .tall, .adjuster-button, .hold-to-open";

/**
 * Each target that is too small, and each pair of neighbours that is too close, in a line. Links within a sentence are
 * left out, as WCAG 2.5.8 does.
 */
export function targetsToMend(page: Page): Promise<readonly string[]> {
  return page.evaluate((largeOnes) => {
    const leastPx = { usual: 48, large: 64, gap: 12 };
    // A bar that sticks to an edge passes over what is scrolled: its place in the flow is what is measured.
    for (const element of document.querySelectorAll<HTMLElement>("*"))
      if (getComputedStyle(element).position === "sticky") element.style.position = "static";
    const isInSentence = (element: Element): boolean =>
      element.matches("a") &&
      getComputedStyle(element).display === "inline" &&
      (element.parentElement?.textContent?.trim() ?? "") !== (element.textContent?.trim() ?? "");
    const open = document.querySelector("dialog[open]") ?? document;
    const found = new Map<Element, DOMRect>();
    for (const element of open.querySelectorAll("a[href], button, input, select, textarea, summary")) {
      if (!element.checkVisibility({ visibilityProperty: true }) || isInSentence(element)) continue;
      // An unseen box over its label is what the label looks like; a plain one is hit on its words too.
      const label = element.matches("input:is([type=radio], [type=checkbox], [type=file])")
        ? element.closest("label")
        : null;
      const target = label ?? element;
      found.set(target, target.getBoundingClientRect());
    }
    const nameOf = (element: Element): string => {
      const name = (element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 50);
      return `${element.localName}${element.className ? `.${element.className}` : ""} "${name}"`;
    };
    // Half a pixel is the rounding of the layout.
    const isBelow = (px: number, least: number): boolean => px < least - 0.5;
    const targets = [...found];
    const small = targets.flatMap(([element, { width, height }]) => {
      const least = element.matches(largeOnes) ? leastPx.large : leastPx.usual;
      return isBelow(width, least) || isBelow(height, least)
        ? [`${nameOf(element)}: ${width.toFixed(0)} by ${height.toFixed(0)} px, below ${least}`]
        : [];
    });
    const close = targets.flatMap(([one, a], index) =>
      targets.slice(index + 1).flatMap(([other, b]) => {
        const across = Math.max(a.left - b.right, b.left - a.right, 0);
        const down = Math.max(a.top - b.bottom, b.top - a.bottom, 0);
        const gap = Math.hypot(across, down);
        return isBelow(gap, leastPx.gap) ? [`${nameOf(one)} and ${nameOf(other)}: ${gap.toFixed(0)} px apart`] : [];
      }),
    );
    return [...small, ...close];
  }, large);
}
