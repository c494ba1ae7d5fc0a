import { Route } from "@solidjs/router";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";

const screen = lazyScreens(() => import("./print-screens.ts"));

/** The pages to be printed; their code is loaded when somebody goes there. */
export function PrintRoutes() {
  return (
    <Route path="/print">
      <Route path="/rider/:riderId" component={screen("SetupPrintScreen")} />
      <Route path="/team" component={screen("TeamPrintScreen")} />
    </Route>
  );
}
