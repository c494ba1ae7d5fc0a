import { Route } from "@solidjs/router";

/** The pit workplace. */
export function PitRoutes() {
  return <Route path="/pit" component={() => <h1>Pit</h1>} />;
}
