/** English texts of a course's profile, and of the file that it comes from. */
import { STEEP_FROM } from "#core/course/course-facts.ts";
import { SHORTEST_TRACK, SMOOTHED_OVER } from "#core/course/track-limits.ts";
import { heightsOnEarth, LONGEST_COURSE } from "#core/weekend/course-shape.ts";

const steepPercent = Math.round(STEEP_FROM * 100);

export const courseProfile = {
  title: "Profile of the course",
  theProfile: "profile",
  summary: (length: string, drop: string) => `Profile: ${length} m long, drop ${drop} m`,
  none: "No profile yet. Jumps and wet ground are judged by hand in any case.",
  choose: "Choose a GPX file",
  chooseHint: (megabytes: string) =>
    `GPX 1.1 with heights, up to ${megabytes} MB. Nothing is saved before you press Save.`,
  reading: "Reading the file…",
  taken: (file: string) => `From ${file}, not saved yet.`,
  leave: "Leave the profile as it was",
  remove: "Remove the profile",
  track: "Track in the file",
  unnamed: (position: number) => `Track ${position}`,
  route: (name: string) => `${name} (a planned route)`,
  uphill: (metres: string) => `This line goes uphill by ${metres} m.`,
  turn: "Turn it round",
  filled: {
    gaps: (count: number, metres: string) =>
      `${count === 1 ? "One gap" : `${count} gaps`} in the track, bridged by straight lines of ${metres} m in all.`,
    withoutHeight: (count: number) => `${count === 1 ? "One point has" : `${count} points have`} no height.`,
    skipped: (count: number) => `${count === 1 ? "One point" : `${count} points`} without a place were left out.`,
  },
  facts: {
    length: "Length",
    slope: "Along the ground",
    drop: "Drop",
    climb: "Climbs on the way",
    mean: "Falls on average",
    steepest: "Steepest",
  },
  metres: (value: string) => `${value} m`,
  percent: (value: string) => `${value} %`,
  stretch: (from: string, to: string) => `${from} to ${to} m`,
  steepestAt: (percent: string, from: string, to: string) => `${percent} % at ${from} to ${to} m`,
  chart: {
    title: "Height over the course",
    height: "Height, m",
    along: "Along the course, m",
    thick: "thick line: steep",
    sections: "bars: sections by their number",
    /** For who cannot see the chart. */
    described: (first: string, last: string, length: string, steep: readonly string[]) =>
      `Height over the course: from ${first} m at the start to ${last} m at the finish, ${length} m on. ${
        steep.length === 0 ? "Nowhere steep." : `Steep at ${steep.join(", ")}.`
      }`,
    more: (count: number) => `${count} more`,
  },
  rule: `Steep is what falls by ${steepPercent} % or more (${steepPercent} m in 100 m), heights smoothed over ${SMOOTHED_OVER} m; our own rule. Steps shorter than that do not show.`,
  proposed: (share: string, part: string) => `${share} % of the length is steep. Proposed part: ${part}.`,
  take: (part: string) => `Take steep ${part}`,
  isTaken: (part: string) => `Steep is ${part}, as proposed. Jumpy and wet are yours to judge.`,
  problems: {
    tooLarge: (file: string, allowed: string) =>
      `The file has ${file} MB; ${allowed} MB are allowed. Nothing was changed.`,
    unreadable: "The file cannot be read. Choose it again. Nothing was changed.",
    notText: "The file is not text in UTF-8, as GPX has to be. Nothing was changed.",
    noReader: "The reader of GPX files is not on this device yet. Try again when the laptop is in reach.",
    notXml: "The file is broken or no GPX file: it cannot be read as XML. Nothing was changed.",
    declares: "The file declares a document type or entities of its own, which GPX does not have. Nothing was changed.",
    notGpx: (root: string) => `The file holds “${root}”, not GPX. Nothing was changed.`,
    badOrder: "Tracks or points lie within each other in this file, which GPX does not allow. Nothing was changed.",
    noTrack: "The file holds no track and no route with two points or more. Nothing was changed.",
    tooManyPoints: (count: string, allowed: string) =>
      `The file has ${count} points; ${allowed} are allowed. Save the run alone, without the rest of the day. Nothing was changed.`,
    tooManyTracks: (count: string, allowed: string) =>
      `The file has ${count} tracks; ${allowed} are allowed. Nothing was changed.`,
    badPlace: (track: string, point: number) =>
      `${track}, point ${point}: latitude goes from −90 to 90, longitude from −180 to 180. Nothing was changed.`,
    badHeight: (track: string, point: number) =>
      `${track}, point ${point}: its height is outside ${heightsOnEarth.lowest} to ${heightsOnEarth.highest} m. Nothing was changed.`,
    noHeight: (track: string) => `${track} has no heights, so it tells nothing of the drop. Record it with heights.`,
    tooShort: (track: string, metres: string) =>
      `${track} is ${metres} m long; it takes ${SHORTEST_TRACK} m for a profile.`,
    tooLong: (track: string, metres: string) =>
      `${track} is ${metres} m long; a course has at most ${LONGEST_COURSE} m. Save the run alone.`,
  },
} as const;
