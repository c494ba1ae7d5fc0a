// @vitest-environment jsdom
import { describe, expect, test, vi } from "vitest";
import { wakeOnReturn } from "#client/device/browser-time.ts";

/** The page is shown or hidden from now on. */
function turn(state: DocumentVisibilityState): void {
  vi.spyOn(document, "visibilityState", "get").mockReturnValue(state);
  document.dispatchEvent(new Event("visibilitychange"));
}

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
