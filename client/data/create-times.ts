/** Run times from a timing system: the table that was read, which column says what, and for which session. */
import { createMemo, createSignal } from "solid-js";
import { data } from "#client/text/data.ts";
import { today } from "#client/widgets/today.ts";
import type { ReadTable } from "#core/exchange/table.ts";
import { mostRows } from "#core/exchange/tables-in.ts";
import { type ColumnMapping, guessMapping, type TimingColumn } from "#core/exchange/timing/column-mapping.ts";
import { timeCandidates } from "#core/exchange/timing/time-candidates.ts";
import { currentWeekend, programme } from "#core/weekend/programme.ts";
import { createImport, type ImportDevice } from "./create-import.ts";
import { loadCsv } from "./load-csv.ts";
import { readFile } from "./read-file.ts";

export interface TimesFile {
  readonly name: string;
  readonly table: ReadTable;
}

export function createTimes(device: ImportDevice, pause: () => Promise<void>) {
  const steps = createImport(device, pause);
  const [file, setFile] = createSignal<TimesFile>();
  const [mapping, setMapping] = createSignal<ColumnMapping>({});
  const [chosenWeekend, setChosenWeekend] = createSignal<string>();
  const [chosenSession, setChosenSession] = createSignal<string>();
  const weekendId = () => chosenWeekend() ?? currentWeekend(device.ledger(), today())?.id;
  const sessions = createMemo(() => {
    const id = weekendId();
    return (id === undefined ? undefined : programme(device.ledger(), id)?.sessions) ?? [];
  });
  const sessionId = () => (sessions().find(({ id }) => id === chosenSession()) ?? sessions()[0])?.id;
  const choose = async (given: File): Promise<void> => {
    setFile(undefined);
    steps.leave();
    const [csv, read] = await Promise.all([loadCsv(), readFile(given)]);
    if (!csv) return steps.refuse(data.file.notLoaded);
    if (!read.ok) return steps.refuse(read.problem.sentence);
    const parsed = csv.readCsv(read.text);
    if (!parsed.ok) return steps.refuse(parsed.problem.sentence);
    const { table } = parsed;
    if (table.rows.length > mostRows) return steps.refuse(data.times.tooMany(mostRows));
    setMapping(guessMapping(table.head));
    setFile({ name: given.name, table });
  };
  const isMapped = () => mapping().time !== undefined && (mapping().plate ?? mapping().name) !== undefined;
  const look = async (): Promise<void> => {
    const chosen = file();
    const weekend = weekendId();
    if (!chosen) return;
    if (!isMapped() || weekend === undefined) return steps.refuse(data.times.needs);
    const columns = mapping();
    const occasion = { weekendId: weekend, sessionId: sessionId() };
    await steps.look(chosen.name, (ledger) => ({
      ok: true,
      ...timeCandidates(ledger, chosen.table.rows, columns, occasion),
    }));
  };
  /** A changed choice makes what was shown untrue. */
  const changing = (change: () => void): void => {
    change();
    steps.leave();
  };
  return {
    steps,
    file,
    mapping,
    weekendId,
    sessions,
    sessionId,
    choose,
    look,
    map: (column: TimingColumn, at: number | undefined) =>
      changing(() => {
        const { [column]: _before, ...rest } = mapping();
        setMapping(at === undefined ? rest : { ...rest, [column]: at });
      }),
    chooseWeekend: (id: string) => changing(() => void setChosenWeekend(id)),
    chooseSession: (id: string) => changing(() => void setChosenSession(id)),
  };
}
