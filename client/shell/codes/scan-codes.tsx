import { Match, Show, Switch } from "solid-js";
import type { CodeKind } from "#client/device/hand-off/codes/code-frame.ts";
import { handOffCodes } from "#client/text/hand-off-codes.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { cameraObstacle, pageCameras } from "./camera.ts";
import { createCodeScan, type ScanState } from "./create-code-scan.ts";

/** The camera, after a press, and how much of the other device's codes it has read. */
export function ScanCodes(props: {
  /** What to point the camera at. */
  hint: string;
  wanted: readonly CodeKind[];
  onDone: (kind: CodeKind, content: Uint8Array) => void;
}) {
  const scan = createCodeScan(props.wanted, (kind, content) => props.onDone(kind, content));
  const reading = () => only(scan.state(), "reading");
  const obstacle = cameraObstacle(pageCameras());
  const isOpen = () => scan.state().state === "starting" || reading() !== undefined;
  return (
    <Show
      when={isOpen()}
      fallback={
        <>
          <p>{props.hint}</p>
          <Problem sentence={only(scan.state(), "refused")?.sentence ?? obstacle} />
          <Show when={obstacle === undefined}>
            <div class="row">
              <button type="button" class="main" onClick={() => void scan.start()}>
                {handOffCodes.camera.start}
              </button>
            </div>
          </Show>
        </>
      }
    >
      <div class="camera">{scan.video}</div>
      <Switch>
        <Match when={reading()?.progress}>
          {(progress) => (
            <label class="stack">
              <span class="hand-off-count">{handOffCodes.camera.progress(progress().read, progress().needed)}</span>
              <progress max={progress().needed} value={progress().read} />
            </label>
          )}
        </Match>
        <Match when={scan.state().state === "starting"}>
          <p>{handOffCodes.camera.starting}</p>
        </Match>
        <Match when={reading()?.leftOut === undefined}>
          <p>{handOffCodes.camera.looking}</p>
        </Match>
      </Switch>
      <p aria-live="polite">{reading()?.leftOut}</p>
      <div class="row">
        <button type="button" onClick={scan.stop}>
          {handOffCodes.camera.stop}
        </button>
      </div>
    </Show>
  );
}

function only<Name extends ScanState["state"]>(
  state: ScanState,
  name: Name,
): Extract<ScanState, { state: Name }> | undefined {
  return state.state === name ? (state as Extract<ScanState, { state: Name }>) : undefined;
}
