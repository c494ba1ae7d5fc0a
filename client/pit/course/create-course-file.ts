/** A profile out of a chosen file: which of its tracks, and what was filled in. What is refused changes nothing. */
import { type Accessor, createSignal, untrack } from "solid-js";
import { courseProfile } from "#client/text/course-profile.ts";
import { formatMegabytes, formatNumber } from "#client/widgets/format.ts";
import { readTextFile } from "#client/widgets/read-text-file.ts";
import type { Filled } from "#core/course/track-profile.ts";
import type { CourseProfile } from "#core/weekend/course-shape.ts";
import { gpxProblemText, trackName, trackProblemText } from "./gpx-problem.ts";
import { loadGpx } from "./load-gpx.ts";
import type { GpxTrack } from "./read-gpx.ts";

/** Largest file, bytes: a day's recording with all that a watch adds to it. */
export const largestGpx = 8_000_000;

export type CourseFileState =
  | { readonly state: "none" | "reading" }
  | { readonly state: "refused"; readonly sentence: string }
  | {
      readonly state: "read";
      readonly file: string;
      readonly tracks: readonly GpxTrack[];
      /** Names to choose from, in the order of the file. */
      readonly names: readonly string[];
      readonly chosen: number;
      /** What to know of the profile, in words. */
      readonly notes: readonly string[];
      /** Why the chosen track gives no profile. */
      readonly problem: string | undefined;
    };

export interface CourseFile {
  readonly state: Accessor<CourseFileState>;
  choose(file: Blob & { readonly name: string }): Promise<void>;
  pick(index: number): void;
  /** Gives back the profile that was there before the file. */
  leave(): void;
}

export interface CourseFileContext {
  readonly profile: Accessor<CourseProfile | undefined>;
  readonly setProfile: (profile: CourseProfile | undefined) => void;
  /** Loads the reader of GPX. */
  readonly load?: typeof loadGpx;
}

/** The profile that a file gives is in the form at once, to be looked at; it is written when the form is. */
export function createCourseFile({ profile, setProfile, load = loadGpx }: CourseFileContext): CourseFile {
  const [state, setState] = createSignal<CourseFileState>({ state: "none" });
  let reader: Awaited<ReturnType<typeof loadGpx>>;
  let before: CourseProfile | undefined;
  let isFromFile = false;
  /** How many files have been chosen. */
  let choices = 0;
  const refuse = (sentence: string): void => void setState({ state: "refused", sentence });
  const show = (file: string, tracks: readonly GpxTrack[], skipped: number, chosen: number): void => {
    const track = tracks[chosen];
    if (!track || !reader) return;
    const names = tracks.map((one, index) => trackName(one, index + 1));
    const made = reader.trackProfile(track.segments);
    setProfile(made.ok ? made.profile : before);
    const problem = made.ok ? undefined : trackProblemText(made.problem, names[chosen] ?? file);
    const notes = made.ok ? notesOf(made.filled, skipped) : [];
    setState({ state: "read", file, tracks, names, chosen, notes, problem });
    pickFrom = (index) => show(file, tracks, skipped, index);
  };
  let pickFrom: (index: number) => void = () => {};
  return {
    state,
    choose: async (file) => {
      const { problems } = courseProfile;
      choices += 1;
      const turn = choices;
      if (file.size > largestGpx) {
        return refuse(problems.tooLarge(formatNumber(Math.ceil(file.size / 1e5) / 10), formatMegabytes(largestGpx)));
      }
      setState({ state: "reading" });
      const text = await readTextFile(file);
      reader ??= await load();
      // Whoever has chosen another file meanwhile wants that one.
      if (turn !== choices) return;
      if (!text.ok) return refuse(text.problem === "unreadable" ? problems.unreadable : problems.notText);
      if (!reader) return refuse(problems.noReader);
      const read = reader.readGpx(text.text);
      if (!read.ok) return refuse(gpxProblemText(read.problem));
      // A second file in a row leaves to what was there before the first.
      if (!isFromFile) before = untrack(profile);
      isFromFile = true;
      show(file.name, read.tracks, read.skipped, 0);
    },
    pick: (index) => pickFrom(index),
    leave: () => {
      setProfile(before);
      isFromFile = false;
      setState({ state: "none" });
    },
  };
}

function notesOf({ gaps, gapLength, withoutHeight }: Filled, skipped: number): readonly string[] {
  const { filled } = courseProfile;
  return [
    ...(gaps > 0 ? [filled.gaps(gaps, formatNumber(Math.round(gapLength)))] : []),
    ...(withoutHeight > 0 ? [filled.withoutHeight(withoutHeight)] : []),
    ...(skipped > 0 ? [filled.skipped(skipped)] : []),
  ];
}
