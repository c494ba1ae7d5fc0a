/** Logging a run: a draft that survives a reload, and one act that saves it. */

import { type Accessor, createSignal } from "solid-js";
import { ulid } from "ulid";
import type { Device } from "#client/device/create-device.ts";
import type { SmallStorage } from "#client/device/storage/browser-storage.ts";
import { sections as sectionWords } from "#client/text/sections.ts";
import { trackside } from "#client/text/trackside.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { courseSections } from "#core/weekend/course-sections.ts";
import type { CourseSection } from "#core/weekend/course-shape.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import type { Run } from "#core/weekend/run.ts";
import { emptyDraft, parseDraft, type RunDraft, runOf } from "./run-draft.ts";

export type SaveResult = { readonly ok: true; readonly run: Run } | { readonly ok: false; readonly sentence: string };

export interface RunLog {
  readonly draft: Accessor<RunDraft>;
  readonly change: (next: RunDraft) => void;
  readonly changeConfidence: (confidence: RunDraft["confidence"]) => void;
  /** Undefined for the whole run. */
  readonly changeSection: (section: CourseSection | undefined) => void;
  /** Writes the run; the draft is given up once that is done, and only then. */
  readonly save: (mounted: RiderBike, weekendId: string, sessionId: string) => SaveResult;
}

export interface RunLogContext {
  readonly device: Pick<Device, "ledger" | "write">;
  readonly riderId: string;
  /** Where the draft is kept: the tab's own storage in a browser. */
  readonly storage: SmallStorage;
  readonly newRunId?: () => string;
}

/** The log of one rider. */
export function createRunLog({ device, riderId, storage, newRunId = ulid }: RunLogContext): RunLog {
  const key = `pitslate.run-draft.${riderId}`;
  const [draft, setDraft] = createSignal(parseDraft(storage.getItem(key)));
  const change = (next: RunDraft): void => {
    setDraft(next);
    if (next === emptyDraft) storage.removeItem(key);
    else storage.setItem(key, JSON.stringify(next));
  };
  return {
    draft,
    change,
    changeConfidence: (confidence) => {
      const { confidence: _before, ...rest } = draft();
      change(confidence === undefined ? rest : { ...rest, confidence });
    },
    changeSection: (section) => {
      const { section: _before, ...rest } = draft();
      change(section === undefined ? rest : { ...rest, section });
    },
    save: (mounted, weekendId, sessionId) => {
      const placed = sectionAsNamedNow(draft(), courseSections(device.ledger(), weekendId));
      if (!placed.ok) return placed;
      const made = runOf(placed.draft, {
        bike: mounted.bikeId,
        weekend: weekendId,
        session: sessionId,
        setup: setupRecords(device.ledger(), mounted),
      });
      if (!made.ok) return made;
      if (isEmpty(made.run)) return { ok: false, sentence: trackside.run.nothingSaid };
      const written = device.write([{ kind: runKind, key: `${riderId}/${newRunId()}`, value: made.run }]);
      if (!written.ok) return { ok: false, sentence: recordProblemText(written.problem) };
      change(emptyDraft);
      return made;
    },
  };
}

type Placed = { readonly ok: true; readonly draft: RunDraft } | Extract<SaveResult, { ok: false }>;

/** The section may have been moved, or the weekend changed, since it was chosen. */
function sectionAsNamedNow(draft: RunDraft, named: readonly CourseSection[]): Placed {
  if (draft.section === undefined) return { ok: true, draft };
  const section = named.find(({ id }) => id === draft.section?.id);
  return section
    ? { ok: true, draft: { ...draft, section } }
    : { ok: false, sentence: sectionWords.problems.gone(draft.section.name) };
}

/** Nothing was said, measured or timed: a touch of the wrong button. */
function isEmpty({ front, rear, timeSeconds, confidence, note }: Run): boolean {
  const said = [...Object.keys(front), ...Object.keys(rear)].length;
  return said === 0 && timeSeconds === undefined && confidence === undefined && note === undefined;
}

/** The records of what is on the bike, as far as it is known and nobody disputes it. */
export function setupRecords(ledger: Ledger, mounted: RiderBike): readonly string[] {
  return [...settingsOnBike(ledger, mounted).values()].flatMap((current) =>
    current.state === "settled" ? current.heads.map(({ id }) => id) : [],
  );
}
