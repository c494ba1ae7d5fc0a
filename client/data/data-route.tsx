import { Route } from "@solidjs/router";
import { lazy } from "solid-js";

const Screen = lazy(async () => ({ default: (await import("./data-screen.tsx")).DataScreen }));

/** Data in and out; its code is loaded when somebody goes there. */
export function DataRoute() {
  return <Route path="/data" component={Screen} />;
}
