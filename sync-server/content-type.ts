import { extname } from "node:path";

const typeByExtension: ReadonlyMap<string, string> = new Map([
  [".html", "text/html; charset=utf-8"],
  [".js", "text/javascript; charset=utf-8"],
  [".mjs", "text/javascript; charset=utf-8"],
  [".css", "text/css; charset=utf-8"],
  [".json", "application/json; charset=utf-8"],
  [".map", "application/json; charset=utf-8"],
  [".webmanifest", "application/manifest+json; charset=utf-8"],
  [".svg", "image/svg+xml; charset=utf-8"],
  [".png", "image/png"],
  [".ico", "image/x-icon"],
  [".webp", "image/webp"],
  [".woff2", "font/woff2"],
  [".wasm", "application/wasm"],
  [".txt", "text/plain; charset=utf-8"],
]);

/** Media type by the ending of a file name; bytes without meaning for an ending that a client does not use. */
export function contentTypeOf(file: string): string {
  return typeByExtension.get(extname(file).toLowerCase()) ?? "application/octet-stream";
}
