/** What others write does not replace what a finger or the focus is on: on every screen the controls stay the same ones. */
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { RecordKind } from "#core/ledger/kind.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { bikeKind, memberKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { conditionsKind, courseKind, sessionKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { type BenchDevice, openBenchDevice } from "#tests/benchmarks/sync/bench-device.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { screens as devices } from "./pits.ts";
import { screens, show } from "./screens.ts";
import { openWorkedWeekend, type WorkedWeekend } from "./worked-weekend.ts";

const kinds: readonly RecordKind[] = [
  memberKind,
  riderKind,
  bikeKind,
  partKind,
  weekendKind,
  courseKind,
  sessionKind,
  conditionsKind,
];

/** Ids of the members who hold the devices. */
const holderIds = { mechanic: "larch", rider: "alder", manager: "heather" } as const;

/** The pause of a search, and the jobs' turns. */
const LATER_MS = 300;

let worked: WorkedWeekend;
let other: BenchDevice;

beforeAll(async () => {
  worked = await openWorkedWeekend();
  other = openBenchDevice({
    id: "other-device",
    port: worked.port,
    clock: Date.now(),
    chance: createChance(7),
  });
  await saysOnServer();
});

afterAll(async () => {
  other?.team.close();
  await worked?.close();
});

test.for(screens)("$name keeps its controls while others write", async (screen) => {
  const holder = worked[screen.holder];
  await holder.page.setViewportSize(devices.laptop);
  const page = await show(screen, worked);
  await holder.syncSays("On the server");
  await page.evaluate(() => {
    const controls = [...document.querySelectorAll("a[href], button, input, select, textarea, summary")];
    Object.assign(globalThis, { controls });
  });
  const name = `Renamed ${screens.indexOf(screen)}`;
  await writeAllAgain(holderIds[screen.holder], name);
  await holder.page.getByRole("banner").getByText(name, { exact: true }).waitFor();
  // What is worked out or looked up later than in the turn in which the records came.
  await page.waitForTimeout(LATER_MS);
  const gone = await page.evaluate(() => {
    const { controls } = globalThis as unknown as { controls: Element[] };
    return controls.flatMap((control) =>
      control.isConnected ? [] : [`${control.localName} ${control.textContent?.trim().slice(0, 40)}`],
    );
  });
  expect(gone).toEqual([]);
});

/** The same values as before, so that little reads differently; only the holder has another name, which every screen shows. */
async function writeAllAgain(holderId: string, name: string): Promise<void> {
  const { ledger } = other.team;
  const entries = kinds.flatMap((kind) =>
    ledger.keys(kind).flatMap((key) => {
      const value = settledValue(ledger.current<unknown>(kind, key));
      if (value === undefined) return [];
      const isHolder = kind === memberKind && key === holderId;
      return [{ kind, key, value: isHolder ? { ...(value as object), name } : value }];
    }),
  );
  expect(entries.length).toBeGreaterThan(kinds.length);
  expect(other.team.writerFor("heather").setMany(entries, { force: true })).toMatchObject({ ok: true });
  await saysOnServer();
}

async function saysOnServer(): Promise<void> {
  await vi.waitFor(() => expect(other.team.status().state).toBe("on the server"), { timeout: 20_000 });
}
