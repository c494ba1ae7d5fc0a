/**
 * Which room may import which. Imports point one way: a room that is not in the
 * list of another may not be imported by it, not even for a type.
 *
 * A room is named by its folder; the longest matching folder counts. `packages`
 * are npm packages (with what lies below them); `node:` stands for Node's own.
 */
export interface Layer {
  readonly room: string;
  readonly rooms: readonly string[];
  readonly packages: readonly string[];
}

const planning = [
  "core/quantity",
  "core/ledger",
  "core/team",
  "core/weekend",
  "core/physics",
  "core/advice",
  "core/service",
  "core/course",
];

export const layers: readonly Layer[] = [
  { room: "core/quantity", rooms: [], packages: [] },
  { room: "core/ledger", rooms: [], packages: ["zod", "yjs", "lib0"] },
  { room: "core/protocol", rooms: [], packages: ["zod", "lib0"] },
  { room: "core/physics", rooms: ["core/quantity"], packages: [] },
  { room: "core/team", rooms: ["core/quantity", "core/ledger"], packages: ["zod"] },
  { room: "core/weekend", rooms: ["core/quantity", "core/ledger", "core/team"], packages: ["zod"] },
  { room: "core/course", rooms: ["core/weekend"], packages: ["geographiclib-geodesic"] },
  { room: "core/advice", rooms: ["core/quantity", "core/physics", "core/team", "core/weekend"], packages: [] },
  { room: "core/service", rooms: ["core/quantity", "core/team", "core/weekend"], packages: ["zod"] },
  { room: "core/planning", rooms: planning, packages: [] },
  { room: "core/exchange", rooms: [...planning, "core/planning"], packages: ["zod"] },
  {
    room: "sync-server",
    rooms: ["core/protocol", "core/ledger", "core/team"],
    packages: ["ws", "y-protocols", "yjs", "lib0", "libsql", "zod", "sirv", "node:"],
  },
  {
    room: "client/device",
    rooms: [
      "core/quantity",
      "core/ledger",
      "core/protocol",
      "core/team",
      "core/weekend",
      "core/service",
      "core/planning",
    ],
    packages: ["yjs", "y-protocols", "lib0", "idb", "ulid", "fflate", "uqr", "zxing-wasm", "zod", "solid-js"],
  },
  {
    room: "client/text",
    rooms: ["core/quantity", "core/team", "core/weekend", "core/advice", "core/planning", "core/course"],
    packages: [],
  },
  { room: "client/design", rooms: [], packages: [] },
  { room: "client/widgets", rooms: [...planning, "client/text"], packages: ["solid-js"] },
  {
    room: "client/shell",
    rooms: [...planning, "client/device", "client/text", "client/widgets"],
    packages: ["solid-js", "@solidjs/router", "zxing-wasm", "virtual:pwa-register"],
  },
  ...["client/pit", "client/trackside", "client/review"].map((room) => ({
    room,
    rooms: [...planning, "core/planning", "client/device", "client/text", "client/widgets"],
    packages: ["solid-js", "@solidjs/router", "ulid", ...(room === "client/pit" ? ["@tmcw/togeojson", "zod"] : [])],
  })),
  {
    room: "client/find",
    rooms: [...planning, "core/planning", "client/device", "client/text", "client/widgets"],
    packages: ["solid-js", "@solidjs/router"],
  },
  {
    room: "client/data",
    rooms: [
      ...planning,
      "core/planning",
      "core/exchange",
      "client/device",
      "client/shell",
      "client/text",
      "client/widgets",
    ],
    packages: ["solid-js", "@solidjs/router", "ulid", "papaparse"],
  },
  {
    room: "client/print",
    rooms: [...planning, "core/planning", "client/device", "client/text", "client/widgets"],
    packages: ["solid-js", "@solidjs/router"],
  },
  {
    room: "client",
    rooms: [
      "client/device",
      "client/shell",
      "client/pit",
      "client/trackside",
      "client/review",
      "client/data",
      "client/find",
      "client/print",
      "client/design",
      "client/text",
    ],
    packages: ["solid-js", "@solidjs/router"],
  },
  {
    room: "scenarios",
    rooms: [...planning, "core/planning", "core/exchange", "core/protocol", "client/device", "sync-server"],
    packages: [
      "zod",
      "yjs",
      "lib0",
      "ulid",
      "geographiclib-geodesic",
      "playwright-core",
      "@sparticuz/chromium",
      "node:",
    ],
  },
];

/** Files that may import yjs inside core/ledger: Y types never leave them. */
export const yjsFiles = [
  "core/ledger/content-digest.ts",
  "core/ledger/differing-entries.ts",
  "core/ledger/document.ts",
  "core/ledger/placing-steps.ts",
  "core/ledger/update-guard.ts",
];
