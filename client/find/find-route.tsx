import { Route } from "@solidjs/router";
import { withWords } from "#client/text/load-words.ts";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";

export const loadFind = withWords(() => import("./find-screen.tsx"));
const screen = lazyScreens(loadFind);

/** Looking for riders, changes and notes. */
export function FindRoute() {
  return <Route path="/find" component={screen("FindScreen")} />;
}
