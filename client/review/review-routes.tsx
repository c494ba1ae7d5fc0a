import { Route } from "@solidjs/router";

/** The review workplace. */
export function ReviewRoutes() {
  return <Route path="/review" component={() => <h1>Review</h1>} />;
}
