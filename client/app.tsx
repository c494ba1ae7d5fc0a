import { Route, Router } from "@solidjs/router";
import { DeviceProvider } from "./device/device-context.tsx";
import { PitRoutes } from "./pit/pit-routes.tsx";
import { ReviewRoutes } from "./review/review-routes.tsx";
import { HandOverByCodesScreen, TakeInByCodesScreen } from "./shell/codes-screens.tsx";
import { HandOff } from "./shell/hand-off.tsx";
import { Shell } from "./shell/shell.tsx";
import { WhoAreYou } from "./shell/who-are-you.tsx";
import { TracksideRoutes } from "./trackside/trackside-routes.tsx";

/** The three workplaces behind a choice of who you are. */
export function App() {
  return (
    <DeviceProvider>
      <Router root={Shell}>
        <Route path="/" component={WhoAreYou} />
        <Route path="/hand-off" component={HandOff} />
        <Route path="/hand-off/hand-over" component={HandOverByCodesScreen} />
        <Route path="/hand-off/take-in" component={TakeInByCodesScreen} />
        <PitRoutes />
        <TracksideRoutes />
        <ReviewRoutes />
      </Router>
    </DeviceProvider>
  );
}
