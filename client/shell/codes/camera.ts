/** The device's camera, for reading codes. Nothing is recorded, and no sound is asked for. */
import { handOffCodes } from "#client/text/hand-off-codes.ts";

export type OpenedCamera =
  | { readonly ok: true; readonly stream: MediaStream }
  | { readonly ok: false; readonly sentence: string };

/** Where cameras come from: of a page, {@link pageCameras}. */
export interface Cameras {
  readonly isSecureContext: boolean;
  /** Absent on pages that are not secure, and where there is nothing of the sort. */
  readonly mediaDevices: Pick<MediaDevices, "getUserMedia"> | undefined;
}

export function pageCameras(): Cameras {
  return { isSecureContext: window.isSecureContext, mediaDevices: navigator.mediaDevices };
}

/** Why there can be no camera, in a sentence; undefined when the browser may give one. */
export function cameraObstacle({ isSecureContext, mediaDevices }: Cameras): string | undefined {
  if (!isSecureContext) return handOffCodes.camera.insecure;
  return mediaDevices === undefined ? handOffCodes.camera.none : undefined;
}

/** Asks for the camera at the back, or the one that there is. The caller closes it. */
export async function openCamera(cameras: Cameras): Promise<OpenedCamera> {
  const { mediaDevices } = cameras;
  const obstacle = cameraObstacle(cameras);
  if (obstacle !== undefined || mediaDevices === undefined) {
    return { ok: false, sentence: obstacle ?? handOffCodes.camera.none };
  }
  try {
    const stream = await mediaDevices.getUserMedia({
      audio: false,
      // As sharp as a phone's film: a code's modules are few pixels wide in less.
      video: { facingMode: { ideal: "environment" }, width: { ideal: 1920 }, height: { ideal: 1080 } },
    });
    return { ok: true, stream };
  } catch (error) {
    return { ok: false, sentence: sentenceOf(error) };
  }
}

export function closeCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

/** By the names of the errors of getUserMedia (W3C Media Capture and Streams, 10.2). */
function sentenceOf(error: unknown): string {
  switch ((error as Partial<DOMException> | undefined)?.name) {
    case "NotAllowedError":
    case "SecurityError":
      return handOffCodes.camera.refused;
    case "NotFoundError":
    case "OverconstrainedError":
      return handOffCodes.camera.none;
    default:
      return handOffCodes.camera.failed;
  }
}
