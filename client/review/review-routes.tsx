import { Route } from "@solidjs/router";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";
import { loadReview } from "./load-review.ts";

const screen = lazyScreens(loadReview);

/** The review workplace: baselines, their versions, and what was changed. */
export function ReviewRoutes() {
  return (
    <Route path="/review">
      <Route path="/" component={screen("MatrixScreen")} />
      <Route path="/rider/:riderId" component={screen("RiderScreen")} />
      <Route path="/changelog" component={screen("ChangelogScreen")} />
    </Route>
  );
}
