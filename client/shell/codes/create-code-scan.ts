/** Reading a sequence of codes with the camera. `create…` owns its scope: the camera is closed with its owner. */
import { createSignal, onCleanup } from "solid-js";
import type { CodeKind } from "#client/device/hand-off/codes/code-frame.ts";
import { collectCodes } from "#client/device/hand-off/codes/collect-codes.ts";
import type { Picture } from "#client/device/hand-off/codes/picture.ts";
import type { CodeReader } from "#client/device/hand-off/codes/read-code.ts";
import { codeProblemText } from "#client/shell/hand-off-problem-text.ts";
import { handOffCodes } from "#client/text/hand-off-codes.ts";
import { closeCamera, openCamera, pageCameras } from "./camera.ts";
import { pageCodeReader } from "./page-code-reader.ts";

export type ScanState =
  | { readonly state: "idle" }
  | { readonly state: "starting" }
  | {
      readonly state: "reading";
      readonly progress: { readonly read: number; readonly needed: number } | undefined;
      /** Why the last code was left out. */
      readonly leftOut: string | undefined;
    }
  | { readonly state: "refused"; readonly sentence: string };

/** Between two pictures: the screen stays answerable, and each code of the sender's five a second is seen some times. */
const PAUSE_MS = 40;

export function createCodeScan(wanted: readonly CodeKind[], onDone: (kind: CodeKind, content: Uint8Array) => void) {
  const [state, setState] = createSignal<ScanState>({ state: "idle" });
  const video = document.createElement("video");
  video.muted = true;
  video.playsInline = true;
  video.setAttribute("aria-label", handOffCodes.camera.view);
  /** Ends what the last start has begun. */
  let end = (): void => {};

  const stop = (): void => {
    end();
    setState({ state: "idle" });
  };
  const start = async (): Promise<void> => {
    end();
    let isEnded = false;
    end = () => {
      isEnded = true;
    };
    setState({ state: "starting" });
    const refuse = (sentence: string): void => {
      if (isEnded) return;
      end();
      setState({ state: "refused", sentence });
    };
    const reader = pageCodeReader().catch(() => undefined);
    const camera = await openCamera(pageCameras());
    if (!camera.ok) return refuse(camera.sentence);
    if (isEnded) return closeCamera(camera.stream);
    end = () => {
      isEnded = true;
      closeCamera(camera.stream);
      video.srcObject = null;
    };
    video.srcObject = camera.stream;
    // Unplugged, or taken away by the system while the page was out of sight.
    for (const track of camera.stream.getTracks()) track.onended = () => refuse(handOffCodes.camera.failed);
    const read = await reader;
    if (read === undefined) return refuse(handOffCodes.camera.noReader);
    try {
      await video.play();
      await watch(read, () => isEnded);
    } catch {
      refuse(handOffCodes.camera.failed);
    }
  };
  /** Reads picture after picture until the content is whole, or it is told to end. */
  const watch = async (read: CodeReader, isEnded: () => boolean): Promise<void> => {
    const collection = collectCodes(wanted);
    const look = pictures(video);
    const showProgress = (leftOut?: string): void =>
      void setState({ state: "reading", progress: collection.progress(), leftOut });
    showProgress();
    while (!isEnded()) {
      const picture = look();
      const codes = picture ? await read(picture) : [];
      if (isEnded()) return;
      for (const bytes of codes) {
        const outcome = collection.add(bytes);
        if (outcome.type === "done") {
          stop();
          return onDone(outcome.kind, outcome.content);
        }
        showProgress(outcome.type === "left out" ? codeProblemText(outcome.problem) : undefined);
      }
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
    }
  };
  onCleanup(() => end());
  return { state, video, start, stop };
}

/** Gives what the video shows now; undefined while it shows nothing. */
function pictures(video: HTMLVideoElement): () => Picture | undefined {
  const canvas = document.createElement("canvas");
  const context = canvas.getContext("2d", { willReadFrequently: true });
  return () => {
    const { videoWidth, videoHeight } = video;
    if (context === null || videoWidth === 0 || videoHeight === 0) return undefined;
    if (canvas.width !== videoWidth) canvas.width = videoWidth;
    if (canvas.height !== videoHeight) canvas.height = videoHeight;
    context.drawImage(video, 0, 0);
    return context.getImageData(0, 0, videoWidth, videoHeight);
  };
}
