/** What a first visit loads before anybody has said who he is, beside the bare minimum of the libraries under it. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import { root } from "#tests/source-files.ts";
import { line } from "../measure.ts";

const MOST_TIMES_BARE = 1.5;

/** Uses of each library as small as a page that shows, keeps and syncs a checked value can have them. */
const libraries = `
import { createSignal } from "solid-js";
import { render } from "solid-js/web";
import * as Y from "yjs";
import { IndexeddbPersistence } from "y-indexeddb";
import { WebsocketProvider } from "y-websocket";
`;
const use = `
const [text, setText] = createSignal("");
const document_ = new Y.Doc();
new IndexeddbPersistence("bare", document_);
new WebsocketProvider(location.origin, "bare", document_);
const schema = z.object({ text: z.string() });
document_.on("update", () => setText(schema.parse(document_.getMap("bare").toJSON()).text));
render(() => text(), document.body);
`;

/** Judges what is built in `client/dist`. */
export async function benchFirstVisit(write: (text: string) => void): Promise<boolean> {
  const ours = firstVisitBytes(join(root, "client/dist"));
  const withMini = await bareBytes("zod/mini");
  const withZod = await bareBytes("zod");
  const times = ours / withMini;
  const kept = times <= MOST_TIMES_BARE;
  write("\nFirst visit\n");
  write(line("bare minimum: solid, yjs, y-indexeddb, y-websocket, zod/mini", kilobytes(withMini)));
  write(line("  the same with zod", `${kilobytes(withZod)}: we are ${(ours / withZod).toFixed(2)} times that`));
  write(
    line("JavaScript before somebody has chosen who he is", `${kilobytes(ours)}, ${times.toFixed(2)} times`, {
      text: `at most ${MOST_TIMES_BARE} times the bare minimum with zod/mini`,
      kept,
    }),
  );
  return kept;
}

/** Gzipped bytes of the scripts that the page itself names: its entry, and what that cannot start without. */
function firstVisitBytes(dist: string): number {
  const page = readFileSync(join(dist, "index.html"), "utf8");
  const scripts = [
    ...page.matchAll(/<script[^>]* src="([^"]+)"/g),
    ...page.matchAll(/<link rel="modulepreload"[^>]* href="([^"]+)"/g),
  ].flatMap(([, path]) => path ?? []);
  if (scripts.length === 0) throw new Error("The built page names no script.");
  return scripts.reduce((sum, path) => sum + gzipSync(readFileSync(join(dist, path))).length, 0);
}

/** Gzipped bytes of the libraries bundled alone, with the client's target. */
async function bareBytes(zod: "zod" | "zod/mini"): Promise<number> {
  const folder = mkdtempSync(join(resolve(root, "node_modules"), ".pitslate-bare-"));
  try {
    const entry = join(folder, "bare.js");
    writeFileSync(entry, `${libraries}import * as z from "${zod}";\n${use}`);
    const built = await build({
      configFile: false,
      root: folder,
      logLevel: "error",
      build: { target: "es2022", write: false, rollupOptions: { input: entry } },
    });
    const [output] = Array.isArray(built) ? built : [built];
    if (output === undefined || !("output" in output)) throw new Error("Vite has built nothing.");
    return output.output.reduce((sum, file) => sum + (file.type === "chunk" ? gzipSync(file.code).length : 0), 0);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB gzipped`;
}
