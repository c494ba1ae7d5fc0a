import { ErrorBoundary, type JSX, Suspense } from "solid-js";
import { common } from "#client/text/common.ts";
import { Problem } from "#client/widgets/problem.tsx";

/**
 * A screen that may still have to be loaded. Without the program's own copy, as on http in a local network, a page that has
 * lost the server cannot load more of itself: then it says so, and what is on the device stays.
 *
 * `notLoaded` says what to do instead, and `back` is where that is done.
 */
export function Loaded(props: { children: JSX.Element; notLoaded?: string; back?: string }) {
  return (
    <ErrorBoundary
      fallback={(fault: unknown) => (
        <div class="stack">
          <Problem sentence={isNotLoaded(fault) ? (props.notLoaded ?? common.notLoaded) : common.fault} />
          <p class="row">
            <button type="button" onClick={() => location.reload()}>
              {common.again}
            </button>
            <a href={props.back ?? "/"} class="button">
              {props.back === undefined ? common.toStart : common.back}
            </a>
          </p>
        </div>
      )}
    >
      <Suspense fallback={<p>{common.loadingScreen}</p>}>{props.children}</Suspense>
    </ErrorBoundary>
  );
}

/** Browsers reject an import that cannot be fetched with a TypeError and words of their own. */
function isNotLoaded(fault: unknown): boolean {
  return fault instanceof TypeError && /import|module|load/i.test(fault.message);
}
