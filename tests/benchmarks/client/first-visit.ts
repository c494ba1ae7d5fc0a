/** What a first visit loads before anybody has said who he is, beside the bare minimum of the libraries under it. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { build, type InlineConfig } from "vite";
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

/** Judges the client as it is built. */
export async function benchFirstVisit(write: (text: string) => void): Promise<boolean> {
  const ours = await firstVisitBytes();
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

/**
 * Gzipped bytes of the scripts that run before the first screen is there: the page's entry, the screens and the English
 * texts that it loads, and what these cannot start without.
 */
async function firstVisitBytes(): Promise<number> {
  const chunks = await built({ configFile: `${root}/vite.config.ts`, root: `${root}/client` });
  const byFile = new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
  const entry = chunks.find((chunk) => chunk.isEntry);
  if (!entry) throw new Error("The built page has no entry.");
  const first = entry.dynamicImports.filter((file) => {
    const source = byFile.get(file)?.facadeModuleId ?? "";
    return source.endsWith("/show-app.tsx") || source.endsWith("/english/first-screens.ts");
  });
  if (first.length !== 2) throw new Error("The page's entry does not load the screens and the English texts.");
  const needed = new Set([entry.fileName, ...first]);
  // A set's iteration reaches what is added meanwhile.
  for (const file of needed) for (const imported of byFile.get(file)?.imports ?? []) needed.add(imported);
  return chunks.reduce((sum, chunk) => sum + (needed.has(chunk.fileName) ? gzipSync(chunk.code).length : 0), 0);
}

/** Gzipped bytes of the libraries bundled alone, with the client's target. */
async function bareBytes(zod: "zod" | "zod/mini"): Promise<number> {
  const folder = mkdtempSync(join(resolve(root, "node_modules"), ".pitslate-bare-"));
  try {
    const entry = join(folder, "bare.js");
    writeFileSync(entry, `${libraries}import * as z from "${zod}";\n${use}`);
    const chunks = await built({
      configFile: false,
      root: folder,
      build: { target: "es2022", rollupOptions: { input: entry } },
    });
    return chunks.reduce((sum, chunk) => sum + gzipSync(chunk.code).length, 0);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What a build makes, without writing it. */
async function built(config: InlineConfig) {
  const made = await build({ ...config, logLevel: "error", build: { ...config.build, write: false } });
  const [output] = Array.isArray(made) ? made : [made];
  if (output === undefined || !("output" in output)) throw new Error("Vite has built nothing.");
  return output.output.filter((file) => file.type === "chunk");
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB gzipped`;
}
