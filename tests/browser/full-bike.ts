/** A weekend in which one bike has as many adjusters as a bike can be thought to have: for what has to fit a page. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { scenarioFile } from "#tests/scenarios/scenario-files.ts";

/** Adjusters of one suspension part; two of such and two tyres are twenty. */
const adjusters = [
  { kind: "main-pressure", unit: "psi", minimum: 45, maximum: 130, step: 0.5, felt: 2, large: 5 },
  { kind: "secondary-pressure", unit: "psi", minimum: 80, maximum: 230, step: 1, felt: 2, large: 10 },
  { kind: "volume-spacers", unit: "spacers", minimum: 0, maximum: 4, step: 1, felt: 1, large: 1 },
  { kind: "spring-rate", unit: "lbf/in", minimum: 200, maximum: 600, step: 25, felt: 25, large: 50 },
  { kind: "preload", unit: "turns", minimum: 0, maximum: 4, step: 0.5, felt: 1, large: 2 },
  { kind: "rebound", unit: "clicks", minimum: 0, maximum: 18, step: 1, felt: 1, large: 3 },
  { kind: "low-speed-compression", unit: "clicks", minimum: 0, maximum: 16, step: 1, felt: 1, large: 3 },
  { kind: "high-speed-compression", unit: "clicks", minimum: 0, maximum: 16, step: 1, felt: 1, large: 3 },
  { kind: "tyre-pressure", unit: "psi", minimum: 12, maximum: 40, step: 0.5, felt: 1, large: 3 },
];

const values: Record<string, { value: number; unit: string }> = {
  "main-pressure": { value: 88.5, unit: "psi" },
  "secondary-pressure": { value: 151, unit: "psi" },
  "volume-spacers": { value: 2, unit: "spacers" },
  "spring-rate": { value: 375, unit: "lbf/in" },
  preload: { value: 1.5, unit: "turns" },
  rebound: { value: 11, unit: "clicks" },
  "low-speed-compression": { value: 12, unit: "clicks" },
  "high-speed-compression": { value: 13, unit: "clicks" },
  "tyre-pressure": { value: 23.5, unit: "psi" },
};

/** Writes the demo weekend, up to its conditions, with Rowan Alder on such a bike; `close` removes it. */
export function writeFullBike(): { readonly file: string; close(): void } {
  const folder = mkdtempSync(join(tmpdir(), "pitslate-full-bike-"));
  const file = scenarioFile("kestrel-ridge");
  const scenario = JSON.parse(readFileSync(file, "utf8"));
  const team = JSON.parse(readFileSync(join(file, "..", "team.json"), "utf8"));
  scenario.steps = scenario.steps.filter((step: { do: string }) => /^enter /.test(step.do));
  for (const place of ["fork", "shock"]) team.parts[`alder-${place}`].adjusters = adjusters;
  const full = Object.fromEntries(
    ["fork", "shock"].flatMap((place) => Object.entries(values).map(([kind, value]) => [`${place}.${kind}`, value])),
  );
  for (const baseline of Object.values<{ values: object }>(team.baselines.alder)) {
    baseline.values = { ...baseline.values, ...full };
  }
  writeFileSync(join(folder, "weekend.json"), JSON.stringify(scenario));
  writeFileSync(join(folder, "team.json"), JSON.stringify(team));
  return { file: join(folder, "weekend.json"), close: () => rmSync(folder, { recursive: true, force: true }) };
}
