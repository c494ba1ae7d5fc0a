import { Route } from "@solidjs/router";
import type { Component } from "solid-js";
import { handOff } from "#client/text/hand-off.ts";
import { withWords } from "#client/text/load-words.ts";
import { lazyScreens } from "#client/widgets/lazy-screens.ts";
import { Loaded } from "./loaded.tsx";

const loadScreen = withWords(() => import("./hand-off.tsx"));
const screen = lazyScreens(loadScreen);
// Drawing and reading codes takes far more code than the screen around it, and few visits need it.
const sending = lazyScreens(withWords(() => import("./codes/hand-over-by-codes.tsx")));
const receiving = lazyScreens(withWords(() => import("./codes/take-in-by-codes.tsx")));

/** Loads what a hand-off by file needs: it is wanted when there is no network to load it from. */
export const loadHandOff = () => Promise.all([loadScreen(), import("#client/device/hand-off/hand-off.ts")]);

/** Handing over without a network. */
export function HandOffRoutes() {
  return (
    <Route path="/hand-off">
      <Route path="/" component={screen("HandOff")} />
      <Route path="/hand-over" component={orByFile(sending("HandOverByCodes"))} />
      <Route path="/take-in" component={orByFile(receiving("TakeInByCodes"))} />
    </Route>
  );
}

function orByFile(Screen: Component): Component {
  return () => (
    <Loaded notLoaded={handOff.codesNotLoaded} back="/hand-off">
      <Screen />
    </Loaded>
  );
}
