import { Route } from "@solidjs/router";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";
import { loadPit } from "./load-pit.ts";

const screen = lazyScreens(loadPit);

/** The pit workplace. */
export function PitRoutes() {
  return (
    <>
      <Route path="/pit" component={screen("TeamBoard")} />
      <Route path="/pit/course" component={screen("CoursePage")} />
      <Route path="/pit/weekend/new" component={screen("NewWeekendPage")} />
      <Route path="/pit/weekend/:weekendId/edit" component={screen("ChangeWeekendPage")} />
      <Route path="/pit/rules" component={screen("RulesPage")} />
      <Route path="/pit/rider/:riderId" component={screen("RiderPage")} />
      <Route path="/pit/rider/:riderId/bikes" component={screen("BikesPage")} />
    </>
  );
}
