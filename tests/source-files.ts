/** The project's own source files, for the tests that read them. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

export const root = new URL("..", import.meta.url).pathname;

const skipped = new Set(["node_modules", "dist", "data", ".git", ".cache"]);

/** Paths of all TypeScript and JavaScript files below `folder`, relative to the root, with forward slashes. */
export function sourceFiles(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return skipped.has(entry.name) ? [] : sourceFiles(path);
    return /\.(ts|tsx|mjs)$/.test(entry.name) ? [path] : [];
  });
}

/** The text of a file of {@link sourceFiles}. */
export function readSource(path: string): string {
  return readFileSync(join(root, path), "utf8");
}

/** What a file imports, as written: static, dynamic, re-exported, types and side effects. */
export function importsOf(text: string): readonly string[] {
  const withoutComments = text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/^\s*\/\/.*$/gm, "");
  const pattern = /(?:\bfrom\s+|\bimport\s+|\bimport\s*\(\s*)["']([^"']+)["']/g;
  return [...withoutComments.matchAll(pattern)].map((match) => match[1] ?? "");
}
