import { Route } from "@solidjs/router";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";
import { loadTrackside } from "./load-trackside.ts";

const screen = lazyScreens(loadTrackside);

/** The trackside workplace: what a rider needs between two runs. */
export function TracksideRoutes() {
  return (
    <Route path="/trackside">
      <Route path="/" component={screen("StartScreen")} />
      <Route path="/run" component={screen("RunScreen")} />
      <Route path="/change" component={screen("ChangeScreen")} />
    </Route>
  );
}
