/** Why there is no camera, in a sentence that names the way that is left. */
import { describe, expect, test } from "vitest";
import { cameraObstacle, openCamera } from "#client/shell/codes/camera.ts";

const refusing = (name: string) => ({
  isSecureContext: true,
  mediaDevices: { getUserMedia: () => Promise.reject(new DOMException("no", name)) },
});

describe("without a camera, a sentence says why, and that a file does it too", () => {
  test.each([
    ["on a page that is not secure", { isSecureContext: false, mediaDevices: undefined }, /https/],
    ["in a browser that knows no cameras", { isSecureContext: true, mediaDevices: undefined }, /no camera/],
    ["when the person says no", refusing("NotAllowedError"), /not allowed.*settings/],
    ["when there is none", refusing("NotFoundError"), /no camera/],
    ["when another program has it", refusing("NotReadableError"), /another program/],
  ])("%s", async (_, cameras, expected) => {
    const opened = await openCamera(cameras);
    expect(opened.ok ? "opened" : opened.sentence).toMatch(expected);
    expect(opened.ok ? "opened" : opened.sentence).toContain("by file");
  });

  test("before anybody presses anything, where it can be known", () => {
    expect(cameraObstacle({ isSecureContext: false, mediaDevices: undefined })).toMatch(/https/);
    expect(cameraObstacle(refusing("NotAllowedError"))).toBeUndefined();
  });
});

test("the camera is asked for pictures alone, from the back of the device where it has one there", async () => {
  const asked: unknown[] = [];
  const stream = {} as MediaStream;
  const getUserMedia = (constraints?: MediaStreamConstraints) => {
    asked.push(constraints);
    return Promise.resolve(stream);
  };
  expect(await openCamera({ isSecureContext: true, mediaDevices: { getUserMedia } })).toEqual({ ok: true, stream });
  expect(asked).toMatchObject([{ audio: false, video: { facingMode: { ideal: "environment" } } }]);
});
