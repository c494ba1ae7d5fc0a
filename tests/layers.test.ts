import { describe, expect, test } from "vitest";
import { type Layer, layers, yjsFiles } from "./layer-table.ts";
import { importsOf, readSource, sourceFiles } from "./source-files.ts";

const roots: Readonly<Record<string, string>> = {
  "#core/": "core/",
  "#client/": "client/",
  "#server/": "sync-server/",
  "#scenarios/": "scenarios/",
  "#tests/": "tests/",
};

const checked = ["core", "client", "sync-server", "scenarios"].flatMap(sourceFiles);

function layerOf(path: string): Layer | undefined {
  return [...layers]
    .sort((a, b) => b.room.length - a.room.length)
    .find(({ room }) => path === room || path.startsWith(`${room}/`));
}

/** The path in this project that an import leads to, or undefined for a package. */
function targetOf(from: string, specifier: string): string | undefined {
  if (specifier.startsWith(".")) return new URL(specifier, `file:///${from}`).pathname.slice(1);
  const alias = Object.keys(roots).find((prefix) => specifier.startsWith(prefix));
  return alias && `${roots[alias]}${specifier.slice(alias.length)}`;
}

function faultOf(path: string, layer: Layer, specifier: string): string | undefined {
  const target = targetOf(path, specifier);
  if (target === undefined) {
    const allowed = layer.packages.some(
      (name) => specifier === name || specifier.startsWith(name.endsWith(":") ? name : `${name}/`),
    );
    return allowed ? undefined : `${path} imports the package ${specifier}, which ${layer.room} may not`;
  }
  const room = layerOf(target);
  if (room === undefined) return `${path} imports ${target}, which is in no room`;
  if (room === layer || layer.rooms.includes(room.room)) return undefined;
  return `${path} imports ${target}: ${layer.room} may not import ${room.room}`;
}

describe("the layer table", () => {
  test("every source file is in a room", () => {
    expect(checked.filter((path) => layerOf(path) === undefined)).toEqual([]);
  });

  test("no file imports what its room may not", () => {
    const faults = checked.flatMap((path) => {
      const layer = layerOf(path);
      return layer ? importsOf(readSource(path)).flatMap((specifier) => faultOf(path, layer, specifier) ?? []) : [];
    });
    expect(faults).toEqual([]);
  });

  test("it names an import that it must refuse", () => {
    const physics = layerOf("core/physics/gas.ts");
    expect(physics && faultOf("core/physics/gas.ts", physics, "#core/advice/limits.ts")).toContain(
      "may not import core/advice",
    );
    expect(physics && faultOf("core/physics/gas.ts", physics, "yjs")).toContain("imports the package yjs");
  });

  test("only the files that are meant to touch yjs in the ledger do", () => {
    const touching = sourceFiles("core/ledger").filter((path) => importsOf(readSource(path)).includes("yjs"));
    expect(touching.filter((path) => !yjsFiles.includes(path))).toEqual([]);
  });

  test("rooms do not import each other in a circle", () => {
    const circles = layers.filter((layer) => reaches(layer, layer.room, new Set()));
    expect(circles.map(({ room }) => room)).toEqual([]);
  });

  test("nothing climbs out of its folder by ../../, and nothing imports the tests", () => {
    const faults = checked.filter((path) =>
      importsOf(readSource(path)).some((specifier) => specifier.includes("../../") || specifier.startsWith("#tests/")),
    );
    expect(faults).toEqual([]);
  });
});

function reaches(from: Layer, wanted: string, seen: Set<string>): boolean {
  return from.rooms.some((name) => {
    if (name === wanted) return true;
    if (seen.has(name)) return false;
    seen.add(name);
    const next = layers.find(({ room }) => room === name);
    return next ? reaches(next, wanted, seen) : false;
  });
}
