import { Route } from "@solidjs/router";

/** The trackside workplace. */
export function TracksideRoutes() {
  return <Route path="/trackside" component={() => <h1>Trackside</h1>} />;
}
