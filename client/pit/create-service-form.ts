/** Writing down a service while its dialog is open. */

import { type Accessor, createSignal, untrack } from "solid-js";
import { ulid } from "ulid";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { serviceEntries } from "#core/planning/service-entries.ts";
import { type ServiceWork, worksOf } from "#core/service/service-work.ts";
import { placesOf } from "#core/team/parts-on-bike.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { valuesOnBike } from "#core/weekend/on-the-bike.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { type ServicePlace, settingLines, workName } from "./service-lines.ts";

/** What is typed: `hoursBefore` in hours of riding since a service that was done earlier. */
export interface ServiceDraft {
  readonly what: ServiceWork | undefined;
  readonly hoursBefore: number | undefined;
  readonly note: string;
}

export interface ServiceFormState {
  readonly works: Accessor<readonly ServiceWork[]>;
  readonly draft: Accessor<ServiceDraft>;
  readonly problem: Accessor<string | undefined>;
  /** What will be written down with it, a line for each setting. */
  readonly settings: Accessor<readonly string[]>;
  /** The adjusters in dispute, by name: for these there is nothing to write down. */
  readonly disputed: Accessor<string>;
  set(fields: Partial<ServiceDraft>): void;
  /** True when it was written. */
  save(): boolean;
}

/** What of the bench the form needs. */
export interface ServiceFormContext {
  readonly bench: Pick<RiderBench, "acts" | "mounted" | "settings" | "disputed"> & {
    readonly device: Pick<RiderBench["device"], "ledger" | "write">;
    readonly chosen: Pick<RiderBench["chosen"], "programme">;
  };
  readonly place: ServicePlace;
  readonly newId?: () => string;
}

/** A service of the part at `place`. Where a part has one work only, that is what was done. */
export function createServiceForm({ bench, place, newId = ulid }: ServiceFormContext): ServiceFormState {
  const works = (): readonly ServiceWork[] => {
    const part = bench.mounted()?.parts[place];
    return part ? worksOf(part) : [];
  };
  const partAt = ({ bikeId, bike }: RiderBike): string | undefined => {
    const at = placesOf(bench.device.ledger(), bikeId, bike)[place];
    return at.state === "mounted" ? at.partId : undefined;
  };
  const only = untrack(() => (works().length === 1 ? works()[0] : undefined));
  const [draft, setDraft] = createSignal<ServiceDraft>({ what: only, hoursBefore: undefined, note: "" });
  const [problem, setProblem] = createSignal<string>();
  const refuse = (sentence: string): boolean => {
    setProblem(sentence);
    return false;
  };
  return {
    works,
    draft,
    problem,
    settings: () => settingLines(valuesOnBike(bench.settings())),
    disputed: () => bench.disputed().map(trade.adjuster).join(", "),
    set: (fields) => {
      setDraft((now) => ({ ...now, ...fields }));
      setProblem(undefined);
    },
    save: () => {
      const mounted = bench.mounted();
      if (!mounted) return false;
      const { what, hoursBefore, note } = draft();
      if (what === undefined) return refuse(pit.service.needsWork);
      const weekendId = bench.chosen.programme()?.weekendId;
      const entries = serviceEntries({
        id: newId(),
        mounted,
        place,
        partId: partAt(mounted),
        what,
        settings: bench.settings(),
        note: note.trim(),
        ...(hoursBefore !== undefined && { hoursBefore }),
        ...(weekendId !== undefined && { weekendId }),
      });
      if (!entries.ok) return refuse(trade.entryProblem(entries.problem));
      const wrote = bench.device.write(entries.entries);
      if (!wrote.ok) return refuse(recordProblemText(wrote.problem));
      return bench.acts.wrote(wrote, pit.service.saved(common.places[place], workName(place, what)));
    },
  };
}
