/** Showing a sequence of codes, one after the other. `create…` owns its scope: the steps end with their owner. */
import { createEffect, createMemo, createSignal, onCleanup } from "solid-js";
import type { CodeSequence } from "#client/device/hand-off/codes/code-sequence.ts";
import { codeModules, codePicture } from "#client/device/hand-off/codes/draw-code.ts";
import type { Picture } from "#client/device/hand-off/codes/picture.ts";
import { handOffCodes } from "#client/text/hand-off-codes.ts";

/**
 * Five codes a second. A part of the picture that turns dark and light again with each code flashes two and a half
 * times a second then; more than three flashes are not safe for everybody (WCAG 2.2, 2.3.2). A camera that takes 15
 * pictures a second in dim light still gets three of each code.
 */
const STEP_MS = 200;
/** For those who have asked their device for less movement. */
const CALM_STEP_MS = 1000;
/** Codes that a camera misses while another one is read: a third, by assumption, for the time that is announced. */
const SHARE_READ = 2 / 3;

/** What paces the codes: of a page, {@link pagePace}. */
export interface CodePace {
  /** Less movement is wanted. */
  readonly isCalm: boolean;
  /** Calls `step` every so many milliseconds until it is stopped by what it returns. */
  every(milliseconds: number, step: () => void): () => void;
}

export function pagePace(): CodePace {
  return {
    isCalm: matchMedia("(prefers-reduced-motion: reduce)").matches,
    every: (milliseconds, step) => {
      const timer = setInterval(step, milliseconds);
      return () => clearInterval(timer);
    },
  };
}

export function createCodeShow(sequence: CodeSequence, pace: CodePace) {
  const [number, setNumber] = createSignal(0);
  const [isPlaying, setPlaying] = createSignal(sequence.blocks > 1);
  const stepMs = pace.isCalm ? CALM_STEP_MS : STEP_MS;
  // Past the last number comes the first again; at five a second that is after 27 years.
  const next = (): void => void setNumber((last) => (last + 1) % 2 ** 32);
  createEffect(() => {
    if (isPlaying()) onCleanup(pace.every(stepMs, next));
  });
  const picture = createMemo(() => codePicture(codeModules(sequence.frame(number()))));
  return {
    isPlaying,
    play: () => void setPlaying(true),
    pause: () => void setPlaying(false),
    /** The next code, and no other before it is asked for. */
    next: () => {
      setPlaying(false);
      next();
    },
    number: () => number() + 1,
    /** Keeps the present code drawn in a canvas, one pixel a module. */
    drawIn: (canvas: HTMLCanvasElement) => createEffect(() => draw(canvas, picture())),
    duration: durationInWords((sequence.blocks / SHARE_READ) * (stepMs / 1000)),
  };
}

function draw(canvas: HTMLCanvasElement, { data, width, height }: Picture): void {
  canvas.width = width;
  canvas.height = height;
  canvas.getContext("2d")?.putImageData(new ImageData(data, width, height), 0, 0);
}

function durationInWords(seconds: number): string {
  return seconds < 60
    ? handOffCodes.code.seconds(Math.ceil(seconds))
    : handOffCodes.code.minutes(Math.ceil(seconds / 60));
}
