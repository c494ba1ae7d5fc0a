/** QR codes out of a picture, by the reader part of zxing-wasm. */
import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader";
import type { Picture } from "./picture.ts";

/** The bytes of the codes in a picture; none when there is no code or it cannot be read. */
export type CodeReader = (picture: Picture) => Promise<readonly Uint8Array[]>;

/**
 * Loads the reader. Its code in wasm comes from where the caller says and from nowhere else: left to itself the package
 * would ask a public server for it.
 * @throws Error when that cannot be loaded or does not run here
 */
export async function createCodeReader(
  wasm: { readonly url: string } | { readonly bytes: ArrayBuffer },
): Promise<CodeReader> {
  const overrides = "url" in wasm ? { locateFile: () => wasm.url } : { wasmBinary: wasm.bytes };
  await prepareZXingModule({ overrides, fireImmediately: true });
  return async ({ data, width, height }) => {
    const found = await readBarcodes(
      { data, width, height, colorSpace: "srgb" } as ImageData,
      // A second code in the picture, on a sticker, must not hide the one that is meant.
      { formats: ["QRCode"], maxNumberOfSymbols: 2, tryHarder: true, tryInvert: false },
    );
    return found.filter(({ isValid }) => isValid).map(({ bytes }) => bytes);
  };
}
