import { loadPit } from "./pit/load-pit.ts";
import { loadReview } from "./review/load-review.ts";
import { loadTrackside } from "./trackside/load-trackside.ts";

const loads = { "/pit": loadPit, "/trackside": loadTrackside, "/review": loadReview } as const;

/** Has the screens of the workplace at `path` on their way while the device is being opened; the router asks for them later. */
export function loadShownWorkplace(path: string): void {
  for (const [root, load] of Object.entries(loads)) {
    // What cannot be had is asked for again, and told about, when it is shown.
    if (path === root || path.startsWith(`${root}/`)) load().catch(() => {});
  }
}
