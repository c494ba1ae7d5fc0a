/** What a page notes about itself while somebody uses it: how soon presses are painted, and what blocks it. */
import type { BrowserContext, Page } from "playwright-core";

export interface Interaction {
  readonly id: number;
  /** ms from the input until the next paint, in steps of 8. Source: https://w3c.github.io/event-timing/ */
  readonly duration: number;
  /** ms of it before the first handler, and in the handlers. */
  readonly waited: number;
  readonly handled: number;
  /** What was pressed. */
  readonly target: string;
}

export interface LongTask {
  /** ms since the navigation began. */
  readonly start: number;
  /** ms, above 50. Source: https://w3c.github.io/longtasks/ */
  readonly duration: number;
}

export interface PageNotes {
  readonly interactions: readonly Interaction[];
  /** All interactions, those too among them that were too short to be noted. */
  readonly interactionCount: number;
  readonly longTasks: readonly LongTask[];
  /** ms since the navigation began. */
  readonly now: number;
}

/** The shortest that the browser notes at all. */
const SHORTEST_MS = 16;

interface Watch {
  readonly interactions: Map<number, Interaction>;
  readonly longTasks: LongTask[];
}

/** Every page that the context opens from now on takes notes, from its first moment. */
export async function watchPages(context: BrowserContext): Promise<void> {
  // The translation to JavaScript wraps named functions in a call of this name, which pages do not have.
  await context.addInitScript({ content: "globalThis.__name ??= (named) => named;" });
  await context.addInitScript((shortest) => {
    const watch: Watch = { interactions: new Map(), longTasks: [] };
    Reflect.set(window, "pageWatch", watch);
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as PerformanceEventTiming[]) {
        const id = (entry as { interactionId?: number }).interactionId ?? 0;
        const known = watch.interactions.get(id);
        if (id === 0 || (known && known.duration >= entry.duration)) continue;
        const target = entry.target instanceof Element ? entry.target : undefined;
        const label = target?.getAttribute("aria-label") ?? target?.textContent ?? known?.target ?? "";
        watch.interactions.set(id, {
          id,
          duration: entry.duration,
          waited: entry.processingStart - entry.startTime,
          handled: entry.processingEnd - entry.processingStart,
          target: `${entry.name} ${location.pathname} ${label.slice(0, 40)}`,
        });
      }
    }).observe({ type: "event", durationThreshold: shortest, buffered: true } as PerformanceObserverInit);
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries()) watch.longTasks.push({ start: startTime, duration });
    }).observe({ type: "longtask", buffered: true });
  }, SHORTEST_MS);
}

/** What the page has noted since it was loaded. */
export function notesOf(page: Page): Promise<PageNotes> {
  return page.evaluate(() => {
    const watch = Reflect.get(window, "pageWatch") as Watch;
    const count = Reflect.get(performance, "interactionCount") as number;
    return {
      interactions: [...watch.interactions.values()],
      interactionCount: count,
      longTasks: watch.longTasks,
      now: performance.now(),
    };
  });
}

/** Returns once what has been done so far is painted. */
export function painted(page: Page): Promise<void> {
  return page.evaluate(
    () => new Promise<void>((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve()))),
  );
}
