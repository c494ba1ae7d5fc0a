import { Route } from "@solidjs/router";
import { withWords } from "#client/text/load-words.ts";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";

const screen = lazyScreens(withWords(() => import("./data-screen.tsx")));

/** Data in and out; its code is loaded when somebody goes there. */
export function DataRoute() {
  return <Route path="/data" component={screen("DataScreen")} />;
}
