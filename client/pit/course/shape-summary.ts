/** Profile and sections of the course in one line. */
import { courseProfile } from "#client/text/course-profile.ts";
import { sections as words } from "#client/text/sections.ts";
import { formatNumber } from "#client/widgets/format.ts";
import { courseFacts } from "#core/course/course-facts.ts";
import type { CourseDraft } from "../course-draft.ts";

export function shapeSummary({ profile, sections }: Pick<CourseDraft, "profile" | "sections">): string {
  if (!profile && sections.length === 0) return words.shape;
  const { length = 0, drop = 0 } = profile ? courseFacts(profile) : {};
  const facts = profile
    ? [courseProfile.summary(formatNumber(Math.round(length)), formatNumber(Math.round(drop)))]
    : [];
  return [...facts, words.count(sections.length)].join(", ");
}
