import { Route } from "@solidjs/router";
import { ChangelogScreen } from "./changelog-screen.tsx";
import { MatrixScreen } from "./matrix-screen.tsx";
import "./changelog.css";
import "./matrix.css";
import "./review.css";
import "./versions.css";
import { RiderScreen } from "./rider-screen.tsx";

/** The review workplace: baselines, their versions, and what was changed. */
export function ReviewRoutes() {
  return (
    <Route path="/review">
      <Route path="/" component={MatrixScreen} />
      <Route path="/rider/:riderId" component={RiderScreen} />
      <Route path="/changelog" component={ChangelogScreen} />
    </Route>
  );
}
