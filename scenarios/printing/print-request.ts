/** From the arguments to the page of the client that is printed, with the documents that it is made from. */
import * as Y from "yjs";
import type { Ledger } from "#core/ledger/ledger.ts";
import { describeSheetProblem, setupSheet } from "#core/planning/setup-sheet.ts";
import { riderBikes } from "#core/team/roster.ts";
import { type Programme, programme } from "#core/weekend/programme.ts";
import { loadScenario } from "#scenarios/gate/load-scenario.ts";
import { playScenario } from "#scenarios/player/play-scenario.ts";
import type { SimulatedDevice } from "#scenarios/player/simulated-device.ts";
import type { Scenario } from "#scenarios/schema/scenario.ts";
import type { SheetArguments } from "./sheet-arguments.ts";

export interface PrintRequest {
  /** The documents of the team after the weekend, each as one update. */
  readonly documents: readonly { readonly name: string; readonly update: Uint8Array }[];
  /** How many entries they hold together: the page is complete when it has as many. */
  readonly entries: number;
  /** Who prints. */
  readonly member: string;
  /** The page's address on the server: path and query. */
  readonly address: string;
}

export type PrintRequestResult =
  | { readonly ok: true; readonly request: PrintRequest }
  | { readonly ok: false; readonly sentences: readonly string[] };

/** Plays the scenario and says what to print of it, or what is wrong, one sentence each. */
export function printRequest(args: SheetArguments): PrintRequestResult {
  const parsed = loadScenario(args.file);
  if (!parsed.ok) return { ok: false, sentences: parsed.problems };
  const { scenario } = parsed;
  const member = whoPrints(scenario);
  if (member === undefined) {
    return { ok: false, sentences: ["The scenario has no device of a mechanic or a manager, who could print."] };
  }
  const result = playScenario(scenario);
  if (!result.ok) return { ok: false, sentences: [result.sentence] };
  const device = result.played.devices.find((candidate) => candidate.member === member);
  if (!device) throw new Error(`The device of ${member} was not played.`);
  const address = addressOf(device.ledger, scenario.weekend.id, args);
  const request: PrintRequestResult =
    typeof address === "string"
      ? { ok: true, request: { documents: documentsOf(device), entries: device.ledger.size, member, address } }
      : { ok: false, sentences: [address.sentence] };
  result.played.close();
  return request;
}

/** A mechanic or a manager with a device: theirs hold every rider's documents. */
function whoPrints({ devices, team }: Scenario): string | undefined {
  const withDevice = (role: string) => devices.find(({ member }) => team.members[member]?.role === role)?.member;
  return withDevice("mechanic") ?? withDevice("manager");
}

function addressOf(ledger: Ledger, weekendId: string, args: SheetArguments): string | { readonly sentence: string } {
  const plan = programme(ledger, weekendId);
  if (!plan) throw new Error(`The weekend ${weekendId} was not played.`);
  const query = new URLSearchParams({ weekend: weekendId, paper: args.paper });
  const session = sessionOf(plan, args.session);
  if (typeof session !== "string") return session;
  query.set("session", session);
  const { page } = args;
  if (page.of !== "rider") return `/print/${page.of}?${query}`;
  const riders = riderBikes(ledger).map(({ riderId }) => riderId);
  if (!riders.includes(page.riderId)) {
    return { sentence: `There is no rider "${page.riderId}"; there are: ${riders.join(", ") || "none"}.` };
  }
  const sheet = setupSheet(ledger, weekendId, session, page.riderId);
  return sheet.ok ? `/print/rider/${page.riderId}?${query}` : { sentence: describeSheetProblem(sheet.problem) };
}

/** The session that is wanted; without one the last that has conditions, or else the last. */
function sessionOf({ sessions }: Programme, wanted: string | undefined): string | { readonly sentence: string } {
  const ids = sessions.map(({ id }) => id);
  if (wanted !== undefined && !ids.includes(wanted)) {
    return { sentence: `There is no session "${wanted}"; there are: ${ids.join(", ") || "none"}.` };
  }
  return wanted ?? sessions.findLast(({ conditions }) => conditions)?.id ?? ids.at(-1) ?? "";
}

function documentsOf({ documents }: SimulatedDevice): PrintRequest["documents"] {
  return [...documents].map(([name, ydoc]) => ({ name, update: Y.encodeStateAsUpdate(ydoc) }));
}
