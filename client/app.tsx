import { Route, Router } from "@solidjs/router";
import { onMount } from "solid-js";
import { DataRoute } from "./data/data-route.tsx";
import { DeviceProvider } from "./device/device-context.tsx";
import { FindRoute, loadFind } from "./find/find-route.tsx";
import { loadPit } from "./pit/load-pit.ts";
import { PitRoutes } from "./pit/pit-routes.tsx";
import { PrintRoutes } from "./print/print-routes.tsx";
import { loadReview } from "./review/load-review.ts";
import { ReviewRoutes } from "./review/review-routes.tsx";
import { HandOffRoutes, loadHandOff } from "./shell/hand-off-routes.tsx";
import { loadWhenIdle } from "./shell/load-when-idle.ts";
import { Shell } from "./shell/shell.tsx";
import { WhoAreYou } from "./shell/who-are-you.tsx";
import { loadTrackside } from "./trackside/load-trackside.ts";
import { TracksideRoutes } from "./trackside/trackside-routes.tsx";

/** The three workplaces behind a choice of who you are. */
export function App() {
  onMount(() => loadWhenIdle([loadPit, loadTrackside, loadReview, loadFind, loadHandOff]));
  return (
    <DeviceProvider>
      <Router root={Shell}>
        <Route path="/" component={WhoAreYou} />
        <HandOffRoutes />
        <DataRoute />
        <FindRoute />
        <PitRoutes />
        <TracksideRoutes />
        <ReviewRoutes />
        <PrintRoutes />
      </Router>
    </DeviceProvider>
  );
}
