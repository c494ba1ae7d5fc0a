import { Route } from "@solidjs/router";
import { withWords } from "#client/text/load-words.ts";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";

const screen = lazyScreens(withWords(() => import("./print-screens.ts")));

/** The pages to be printed; their code is loaded when somebody goes there. */
export function PrintRoutes() {
  return (
    <Route path="/print">
      <Route path="/rider/:riderId" component={screen("SetupPrintScreen")} />
      <Route path="/team" component={screen("TeamPrintScreen")} />
      <Route path="/weekend" component={screen("ReportScreen")} />
    </Route>
  );
}
