import { A } from "@solidjs/router";
import { ErrorBoundary, type JSX, lazy, Suspense } from "solid-js";
import { common } from "#client/text/english/common.ts";
import { handOff } from "#client/text/english/hand-off.ts";
import { Problem } from "#client/widgets/problem.tsx";

// Drawing and reading codes takes far more code than the screen around it, and few visits need it.
const HandOverByCodes = lazy(async () => ({
  default: (await import("./codes/hand-over-by-codes.tsx")).HandOverByCodes,
}));
const TakeInByCodes = lazy(async () => ({
  default: (await import("./codes/take-in-by-codes.tsx")).TakeInByCodes,
}));

/** Handing over by codes, loaded when it is first opened. */
export function HandOverByCodesScreen() {
  return (
    <Loaded>
      <HandOverByCodes />
    </Loaded>
  );
}

/** Taking in by codes, loaded when it is first opened. */
export function TakeInByCodesScreen() {
  return (
    <Loaded>
      <TakeInByCodes />
    </Loaded>
  );
}

/** Without the program's own copy, as on http in a local network, a page that has lost the server cannot load more of itself. */
function Loaded(props: { children: JSX.Element }) {
  return (
    <ErrorBoundary
      fallback={
        <div class="stack">
          <Problem sentence={handOff.codesNotLoaded} />
          <div class="row">
            <A href="/hand-off" class="button">
              {handOff.back}
            </A>
          </div>
        </div>
      }
    >
      <Suspense fallback={<p>{common.loading}</p>}>{props.children}</Suspense>
    </ErrorBoundary>
  );
}
