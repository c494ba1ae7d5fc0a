/** What a camera sees, as a file: screens of other devices, filmed one picture after the other. */
import { renameSync, writeFileSync } from "node:fs";
import type { Locator } from "playwright-core";

/** Grey values of a picture, row by row. */
export type Shot = Uint8Array;

/** Sides of the picture in pixels: a code fills most of it. */
export const filmSide = 480;

/** Pictures a second; a sender shows its codes at half of that. */
const RATE = 10;

/** Photographs an element of a page, from a little way off and a little askew. */
export async function photograph(element: Locator): Promise<Shot> {
  const png = (await element.screenshot()).toString("base64");
  const grey = await element.page().evaluate(
    async ({ png, side }) => {
      const bytes = Uint8Array.from(atob(png), (character) => character.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([bytes]));
      const canvas = new OffscreenCanvas(side, side);
      const context = canvas.getContext("2d");
      if (context === null) throw new Error("The page cannot draw.");
      context.fillStyle = "#777";
      context.fillRect(0, 0, side, side);
      const scale = (side * 0.88) / Math.max(bitmap.width, bitmap.height);
      context.setTransform(scale, scale * 0.04, -scale * 0.04, scale, side * 0.07, side * 0.04);
      context.drawImage(bitmap, 0, 0);
      const { data } = context.getImageData(0, 0, side, side);
      let text = "";
      for (let index = 0; index < data.length; index += 4) text += String.fromCharCode(data[index] ?? 0);
      return btoa(text);
    },
    { png, side: filmSide },
  );
  return Buffer.from(grey, "base64");
}

/** Writes a film (YUV4MPEG2, each code in two pictures) that a camera shows from its next start on. */
export function writeFilm(file: string, shots: readonly Shot[]): void {
  const header = `YUV4MPEG2 W${filmSide} H${filmSide} F${RATE}:1 Ip A1:1 C420jpeg\n`;
  const noColour = Buffer.alloc((filmSide * filmSide) / 2, 128);
  const pictures = shots.flatMap((shot) => [shot, shot]).flatMap((shot) => [Buffer.from("FRAME\n"), shot, noColour]);
  // In one step, so that a camera never meets half a film.
  writeFileSync(`${file}.new`, Buffer.concat([Buffer.from(header), ...pictures]));
  renameSync(`${file}.new`, file);
}
