/** Bytes as a QR code. */
import { encode } from "uqr";
import { largestQrVersion } from "./code-frame.ts";

/** Modules of white around a code that readers rely on (ISO/IEC 18004, 6.3.8). */
const QUIET_ZONE = 4;

/** Rows of modules, dark ones true, the quiet zone included. `bytes` are those of one frame. */
export function codeModules(bytes: Uint8Array): readonly (readonly boolean[])[] {
  return encode([...bytes], { ecc: "M", maxVersion: largestQrVersion, boostEcc: false, border: QUIET_ZONE }).data;
}

/** The dark modules as the path of an SVG whose unit is one module: a stroke along each row's runs. */
export function codePath(modules: readonly (readonly boolean[])[]): string {
  let path = "";
  for (const [y, row] of modules.entries()) {
    for (let x = 0; x < row.length; x++) {
      if (row[x] !== true) continue;
      const start = x;
      while (row[x + 1] === true) x++;
      path += `M${start} ${y}h${x + 1 - start}v1H${start}z`;
    }
  }
  return path;
}
