// @vitest-environment jsdom
import { describe, expect, test, vi } from "vitest";
import { afterPaint, inTheBackground, wakeOnReturn } from "#client/device/browser-time.ts";

/** The page is shown or hidden from now on. */
function turn(state: DocumentVisibilityState): void {
  vi.spyOn(document, "visibilityState", "get").mockReturnValue(state);
  document.dispatchEvent(new Event("visibilitychange"));
}

describe("work that must not hold up a touch", () => {
  test("comes after the next frame on a page that is seen, and soon on one that is not", async () => {
    const order: string[] = [];
    vi.spyOn(document, "visibilityState", "get").mockReturnValue("visible");
    requestAnimationFrame(() => order.push("frame"));
    await new Promise<void>((resolve) => {
      afterPaint(() => {
        order.push("work");
        resolve();
      });
      order.push("press");
    });
    expect(order).toEqual(["press", "frame", "work"]);
    vi.spyOn(document, "visibilityState", "get").mockReturnValue("hidden");
    const frames = vi.spyOn(globalThis, "requestAnimationFrame");
    await new Promise<void>((resolve) => afterPaint(resolve));
    expect(frames).not.toHaveBeenCalled();
  });

  test("goes to the browser's scheduler at the lowest priority, and to a timer where there is none", async () => {
    await new Promise<void>((resolve) => inTheBackground(resolve));
    const postTask = vi.fn();
    vi.stubGlobal("scheduler", { postTask });
    const act = (): void => {};
    inTheBackground(act);
    expect(postTask).toHaveBeenCalledWith(act, { priority: "background" });
    vi.unstubAllGlobals();
  });
});

describe("a device tries the server at once", () => {
  test.each([
    ["the network is back", () => window.dispatchEvent(new Event("online"))],
    ["the page is back from the browser's cache", () => window.dispatchEvent(new Event("pageshow"))],
    ["the page is shown again", () => turn("visible")],
  ])("when %s", (_when, happen) => {
    const wake = vi.fn();
    const stop = wakeOnReturn(wake);
    happen();
    expect(wake).toHaveBeenCalledOnce();
    stop();
    happen();
    expect(wake).toHaveBeenCalledOnce();
  });

  test("but not when the page is hidden", () => {
    const wake = vi.fn();
    const stop = wakeOnReturn(wake);
    turn("hidden");
    expect(wake).not.toHaveBeenCalled();
    stop();
  });
});
