/** The course form while it is open: what is typed, and saving it. */

import { type Accessor, createSignal, untrack } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { pit } from "#client/text/pit.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { CourseProfile } from "#core/weekend/course-shape.ts";
import { rebaseCourse } from "./course/rebase-course.ts";
import type { SectionDraft } from "./course/section-draft.ts";
import { type ConditionsDraft, type CourseDraft, courseDraft, courseEntries } from "./course-draft.ts";

export interface CourseFormState {
  readonly draft: Accessor<CourseDraft>;
  readonly problem: Accessor<string | undefined>;
  setPart(type: CourseType, part: number | undefined): void;
  setAltitude(metres: number | undefined): void;
  setProfile(profile: CourseProfile | undefined): void;
  setSections(sections: readonly SectionDraft[]): void;
  setConditions(sessionId: string, fields: Partial<ConditionsDraft>): void;
  /** Gives every other session the conditions of this one. */
  copyToAll(sessionId: string): void;
  /** Writes what was changed; the sentence that says what was saved, or undefined when it was refused. */
  save(invalidField: string | undefined): string | undefined;
}

/** The form for one weekend, prefilled with what is known when it opens; later arrivals never touch what is typed. */
export function createCourseForm(device: Pick<Device, "ledger" | "write">, weekendId: string): CourseFormState {
  const [opened, setOpened] = createSignal(untrack(() => courseDraft(device.ledger(), weekendId)));
  const [draft, setDraft] = createSignal(untrack(opened));
  const [problem, setProblem] = createSignal<string>();
  const change = (fields: Partial<CourseDraft>): void => {
    setDraft((now) => ({ ...now, ...fields }));
    setProblem(undefined);
  };
  const refuse = (sentence: string): undefined => {
    setProblem(sentence);
    return undefined;
  };
  return {
    draft,
    problem,
    setPart: (type, part) => change({ mix: { ...draft().mix, [type]: part } }),
    setAltitude: (altitude) => change({ altitude }),
    setProfile: (profile) => change({ profile }),
    setSections: (sections) => change({ sections }),
    setConditions: (sessionId, fields) =>
      change({
        sessions: draft().sessions.map((session) =>
          session.sessionId === sessionId ? { ...session, ...fields } : session,
        ),
      }),
    copyToAll: (sessionId) => {
      const source = draft().sessions.find((session) => session.sessionId === sessionId);
      if (!source) return;
      const { air, bench, ground } = source;
      change({ sessions: draft().sessions.map((session) => ({ ...session, air, bench, ground })) });
    },
    save: (invalidField) => {
      if (invalidField !== undefined) return refuse(pit.course.needsFix(invalidField));
      const now = courseDraft(device.ledger(), weekendId);
      const { draft: rebased, clash } = rebaseCourse(draft(), opened(), now);
      setDraft(rebased);
      setOpened(now);
      if (clash !== undefined) return refuse(pit.course.changedMeanwhile(clash));
      const result = courseEntries(device.ledger(), weekendId, draft(), opened());
      if (!result.ok) return refuse(result.sentence);
      if (result.entries.length === 0) return pit.course.unchanged;
      const wrote = device.write(result.entries);
      if (!wrote.ok) return refuse(recordProblemText(wrote.problem));
      return pit.course.saved(result.written.join(", "));
    },
  };
}
