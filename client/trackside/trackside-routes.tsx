import { Route } from "@solidjs/router";
import { ChangeScreen } from "./change-screen.tsx";
import { RunScreen } from "./run-screen.tsx";
import { StartScreen } from "./start-screen.tsx";
import "./trackside.css";

/** The trackside workplace: what a rider needs between two runs. */
export function TracksideRoutes() {
  return (
    <Route path="/trackside">
      <Route path="/" component={StartScreen} />
      <Route path="/run" component={RunScreen} />
      <Route path="/change" component={ChangeScreen} />
    </Route>
  );
}
