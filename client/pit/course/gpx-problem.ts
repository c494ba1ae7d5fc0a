/** What is wrong with a GPX file or with a track in it, in words. */
import { courseProfile } from "#client/text/course-profile.ts";
import { formatNumber } from "#client/widgets/format.ts";
import type { TrackProblem } from "#core/course/track-profile.ts";
import type { GpxProblem, GpxTrack } from "./read-gpx.ts";

const { problems } = courseProfile;

export function gpxProblemText(problem: GpxProblem): string {
  switch (problem.type) {
    case "not xml":
      return problems.notXml;
    case "declares":
      return problems.declares;
    case "bad order":
      return problems.badOrder;
    case "no track":
      return problems.noTrack;
    case "not gpx":
      return problems.notGpx(problem.root);
    case "too many points":
      return problems.tooManyPoints(formatNumber(problem.count), formatNumber(problem.allowed));
    case "too many tracks":
      return problems.tooManyTracks(formatNumber(problem.count), formatNumber(problem.allowed));
    case "bad place":
      return problems.badPlace(courseProfile.unnamed(problem.track), problem.point);
    case "bad height":
      return problems.badHeight(courseProfile.unnamed(problem.track), problem.point);
  }
}

export function trackProblemText(problem: TrackProblem, track: string): string {
  switch (problem.type) {
    case "no height":
      return problems.noHeight(track);
    case "too short":
      return problems.tooShort(track, formatNumber(Math.floor(problem.length)));
    case "too long":
      return problems.tooLong(track, formatNumber(Math.ceil(problem.length)));
  }
}

/** A track's name in the list of a file's tracks; `position` from 1. */
export function trackName({ name, kind }: GpxTrack, position: number): string {
  const called = name ?? courseProfile.unnamed(position);
  return kind === "route" ? courseProfile.route(called) : called;
}
