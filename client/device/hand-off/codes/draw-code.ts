/** Bytes as a QR code. */
import { encode } from "uqr";
import { largestQrVersion } from "./code-frame.ts";
import type { Picture } from "./picture.ts";

/** Modules of white around a code that readers rely on (ISO/IEC 18004, 6.3.8). */
const QUIET_ZONE = 4;

/** Rows of modules, dark ones true, the quiet zone included. `bytes` are those of one frame. */
export function codeModules(bytes: Uint8Array): readonly (readonly boolean[])[] {
  return encode([...bytes], { ecc: "M", maxVersion: largestQrVersion, boostEcc: false, border: QUIET_ZONE }).data;
}

/** A picture of the code, one pixel a module: black on white, whatever the theme of the screen. */
export function codePicture(modules: readonly (readonly boolean[])[]): Picture {
  const side = modules.length;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [y, row] of modules.entries()) {
    for (const [x, isDark] of row.entries()) {
      if (isDark) data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { data, width: side, height: side };
}
