/**
 * What somebody else saved while the course form was open, taken over into what is typed: what was not touched here
 * takes theirs; what both have changed keeps what is typed here, and is told.
 */
import { courseProfile } from "#client/text/course-profile.ts";
import { pit } from "#client/text/pit.ts";
import { sections } from "#client/text/sections.ts";
import { type CourseDraft, sameConditions, sameGround, sameProfile, sameSections } from "../course-draft.ts";

export interface RebasedCourse {
  readonly draft: CourseDraft;
  /** The first thing that both have changed, in words; undefined when there is none. */
  readonly clash: string | undefined;
}

/**
 * @param draft what is typed
 * @param opened what the form opened with
 * @param now what is stored now, as a draft
 */
export function rebaseCourse(draft: CourseDraft, opened: CourseDraft, now: CourseDraft): RebasedCourse {
  const clashes: string[] = [];
  const rebase = <Part>(
    mine: Part,
    before: Part,
    there: Part,
    same: (a: Part, b: Part) => boolean,
    name: string,
  ): Part => {
    if (same(mine, before)) return there;
    if (!same(there, before) && !same(there, mine)) clashes.push(name);
    return mine;
  };
  const { mix, altitude } = rebase(draft, opened, now, sameGround, pit.course.theCourse);
  const { profile } = rebase(draft, opened, now, sameProfile, courseProfile.theProfile);
  const rebased = rebase(draft, opened, now, sameSections, sections.theSections);
  const sessions = draft.sessions.map((fields) => {
    const find = (other: CourseDraft) => other.sessions.find(({ sessionId }) => sessionId === fields.sessionId);
    const before = find(opened);
    const there = find(now);
    return before && there
      ? rebase(fields, before, there, sameConditions, pit.course.theConditions(fields.name))
      : fields;
  });
  return { draft: { mix, altitude, profile, sections: rebased.sections, sessions }, clash: clashes[0] };
}
