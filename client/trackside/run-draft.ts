/** A run as it is being logged: everything open until it is said. */
import { trackside } from "#client/text/trackside.ts";
import type { End } from "#core/team/place.ts";
import type { CourseSection } from "#core/weekend/course-shape.ts";
import { type confidences, type EndFeedback, type FeelingOf, feelings, type Run } from "#core/weekend/run.ts";
import { parseRunTime } from "./run-time.ts";

/** Numbers in mm, as typed. */
export interface EndDraft extends Omit<EndFeedback, "sag" | "travelUsed"> {
  readonly sag?: number;
  readonly travelUsed?: number;
}

export interface RunDraft {
  readonly front: EndDraft;
  readonly rear: EndDraft;
  readonly confidence?: (typeof confidences)[number];
  /** Where it was; absent for the whole run. */
  readonly section?: CourseSection;
  readonly time: string;
  readonly note: string;
}

export const emptyDraft: RunDraft = { front: {}, rear: {}, time: "", note: "" };

/** What can be asked of an end, in the order of the stroke. */
export const asked = Object.keys(feelings) as readonly FeelingOf[];

/** Where and with what the run was ridden. */
export type RunOccasion = Pick<Run, "bike" | "weekend" | "session"> & { readonly setup: readonly string[] };

export type DraftResult = { readonly ok: true; readonly run: Run } | { readonly ok: false; readonly sentence: string };

/** `end` of the draft with some of it said, or taken back where it is undefined. */
export function withFeedback(
  draft: RunDraft,
  end: End,
  said: { readonly [Key in keyof EndDraft]?: EndDraft[Key] | undefined },
): RunDraft {
  return { ...draft, [end]: withoutUndefined({ ...draft[end], ...said }) };
}

/** Says "good" of everything that nothing was said about; `of` are the questions that the end has. */
export function restGood(draft: RunDraft, end: End, of: readonly FeelingOf[]): RunDraft {
  const open = of.filter((feeling) => draft[end][feeling] === undefined);
  return withFeedback(draft, end, Object.fromEntries(open.map((feeling) => [feeling, "good"])));
}

/** The run that the draft describes, or what is wrong with it in one sentence. */
export function runOf(draft: RunDraft, occasion: RunOccasion): DraftResult {
  const timeSeconds = draft.time.trim() === "" ? undefined : parseRunTime(draft.time);
  if (draft.time.trim() !== "" && timeSeconds === undefined) {
    return { ok: false, sentence: trackside.time.wrong(draft.time) };
  }
  const note = draft.note.trim();
  return {
    ok: true,
    run: {
      bike: occasion.bike,
      weekend: occasion.weekend,
      session: occasion.session,
      setup: [...occasion.setup],
      ...(timeSeconds !== undefined && { timeSeconds }),
      front: feedbackOf(draft.front),
      rear: feedbackOf(draft.rear),
      ...(draft.section !== undefined && { section: draft.section }),
      ...(draft.confidence !== undefined && { confidence: draft.confidence }),
      ...(note !== "" && { note }),
    },
  };
}

/** A draft from stored text; the empty one when the text is none of ours. */
export function parseDraft(text: string | null): RunDraft {
  if (text === null) return emptyDraft;
  try {
    const stored: unknown = JSON.parse(text);
    return isDraft(stored) ? stored : emptyDraft;
  } catch {
    return emptyDraft;
  }
}

function feedbackOf({ sag, travelUsed, ...felt }: EndDraft): EndFeedback {
  return {
    ...felt,
    ...(sag !== undefined && { sag: { value: sag, unit: "mm" as const } }),
    ...(travelUsed !== undefined && { travelUsed: { value: travelUsed, unit: "mm" as const } }),
  };
}

/** The shape is enough: what is in it passes the record's schema before anything is written. */
function isDraft(stored: unknown): stored is RunDraft {
  const draft = stored as Partial<RunDraft> | null;
  return (
    typeof draft === "object" &&
    typeof draft?.time === "string" &&
    typeof draft.note === "string" &&
    typeof draft.front === "object" &&
    typeof draft.rear === "object"
  );
}

function withoutUndefined<Fields extends object>(fields: Fields): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Fields;
}
