import { readFile, realpath } from "node:fs/promises";
import { extname, join, sep } from "node:path";
import { contentTypeOf } from "./content-type.ts";

export type StaticAnswer =
  | { readonly status: 200; readonly body: Uint8Array; readonly type: string; readonly caching: string }
  | { readonly status: 404 | 503; readonly sentence: string };

/** Serves the files of the built client. */
export type StaticFiles = (requestUrl: string) => Promise<StaticAnswer>;

/** A name that carries a hash of the content, as the build gives it, never changes its content. */
const hashedName = /-[A-Za-z0-9_-]{8,}\.[a-z0-9]+$/;
const forEver = "public, max-age=31536000, immutable";
const askEachTime = "no-cache";

/**
 * Only names of plain segments are looked up, and only files whose real path lies in the folder are served, so that
 * neither dots nor links lead out of it. A path without ending is a page of the client and gives index.html.
 */
export function serveFolder(folder: string): StaticFiles {
  return async (requestUrl) => {
    const segments = plainSegments(requestUrl);
    if (segments === undefined) return notFound;
    const name = segments.at(-1) ?? "";
    if (extname(name) === "") return (await read(folder, "index.html", askEachTime)) ?? notBuilt;
    const isHashed = segments[0] === "assets" && hashedName.test(name);
    return (await read(folder, segments.join("/"), isHashed ? forEver : askEachTime)) ?? notFound;
  };
}

const notFound: StaticAnswer = { status: 404, sentence: "There is no such file." };
const notBuilt: StaticAnswer = { status: 503, sentence: "The client is not built yet: npm start builds it." };

function plainSegments(requestUrl: string): string[] | undefined {
  let path: string;
  try {
    path = decodeURIComponent(requestUrl.split(/[?#]/, 1)[0] ?? "");
  } catch {
    return undefined;
  }
  if (!path.startsWith("/")) return undefined;
  const segments = path.split("/").filter((segment) => segment !== "");
  return segments.every((segment) => !segment.startsWith(".") && !/[\\\0:]/.test(segment)) ? segments : undefined;
}

async function read(folder: string, path: string, caching: string): Promise<StaticAnswer | undefined> {
  try {
    const root = await realpath(folder);
    const file = await realpath(join(root, path));
    if (!file.startsWith(root + sep)) return undefined;
    return { status: 200, body: await readFile(file), type: contentTypeOf(path), caching };
  } catch {
    return undefined;
  }
}
