/**
 * The tracks and routes of a GPX 1.1 file. What people carry home from a hill is hostile until it has passed here: no
 * entities, no depth, no number of points that would stop a phone.
 */
import { gpx } from "@tmcw/togeojson";
import * as z from "zod/mini";
import type { TrackSegments } from "#core/course/track.ts";
import { heightsOnEarth } from "#core/weekend/course-shape.ts";

/** Points in a file: fourteen hours at one a second. */
export const MOST_POINTS = 50_000;
/** Tracks and routes in a file: what one can choose from. */
export const MOST_TRACKS = 50;
/** Pieces of all tracks together. */
const MOST_SEGMENTS = 1000;

export interface GpxTrack {
  /** As the file names it; absent where it does not. */
  readonly name: string | undefined;
  /** A route was planned, a track was recorded. */
  readonly kind: "track" | "route";
  readonly segments: TrackSegments;
}

export type GpxProblem =
  | { readonly type: "not xml" | "declares" | "bad order" | "no track" }
  | { readonly type: "not gpx"; readonly root: string }
  | { readonly type: "too many points" | "too many tracks"; readonly count: number; readonly allowed: number }
  | { readonly type: "bad place" | "bad height"; readonly track: number; readonly point: number };

export type GpxFile =
  | { readonly ok: true; readonly tracks: readonly GpxTrack[]; readonly skipped: number }
  | { readonly ok: false; readonly problem: GpxProblem };

/** Reads the text of a file. Whatever is in it, the answer is tracks or one problem. */
export function readGpx(text: string): GpxFile {
  // GPX has no document type. Refusing them before anything is parsed leaves no entity to be expanded.
  if (/<!(DOCTYPE|ENTITY)/i.test(text)) return refuse({ type: "declares" });
  const document = new DOMParser().parseFromString(text, "application/xml");
  if (document.getElementsByTagName("parsererror").length > 0) return refuse({ type: "not xml" });
  const root = document.documentElement.localName;
  if (root !== "gpx") return refuse({ type: "not gpx", root: root.slice(0, 40) });
  const problem = shapeProblem(document);
  if (problem) return refuse(problem);
  // Extensions are of no use here, and each kind of them would take an array as long as the track.
  for (const extensions of [...document.getElementsByTagName("extensions")]) extensions.remove();
  const points = document.querySelectorAll("trkpt, rtept").length;
  const read = z.safeParse(collection, gpx(document));
  if (!read.success) return refuse({ type: "no track" });
  return gpxTracks(read.data, points);
}

/** Only what is needed of GeoJSON (RFC 7946): longitude, latitude, and height where there is one. */
const position = z.array(z.number());
const line = z.array(position);
const properties = z.object({ name: z.optional(z.unknown()), _gpxType: z.optional(z.enum(["trk", "rte"])) });
const feature = z.object({
  properties,
  geometry: z.discriminatedUnion("type", [
    z.object({ type: z.literal("LineString"), coordinates: line }),
    z.object({ type: z.literal("MultiLineString"), coordinates: z.array(line) }),
    z.object({ type: z.literal("Point") }),
  ]),
});
const collection = z.object({ features: z.array(feature) });

function gpxTracks({ features }: z.infer<typeof collection>, points: number): GpxFile {
  const tracks: GpxTrack[] = [];
  for (const { properties, geometry } of features) {
    if (geometry.type === "Point") continue;
    const lines = geometry.type === "LineString" ? [geometry.coordinates] : geometry.coordinates;
    const wrong = lines
      .flat()
      .map(faultOf)
      .findIndex((fault) => fault !== undefined);
    const fault = wrong < 0 ? undefined : faultOf(lines.flat()[wrong] ?? []);
    if (fault) return refuse({ type: fault, track: tracks.length + 1, point: wrong + 1 });
    tracks.push({
      name:
        typeof properties.name === "string" && properties.name.trim() !== ""
          ? properties.name.trim().slice(0, 80)
          : undefined,
      kind: properties._gpxType === "rte" ? "route" : "track",
      segments: lines.map((segment) =>
        segment.map(([longitude = 0, latitude = 0, height]) => ({ longitude, latitude, height })),
      ),
    });
  }
  if (tracks.length === 0) return refuse({ type: "no track" });
  const taken = tracks.reduce((sum, { segments }) => sum + segments.flat().length, 0);
  return { ok: true, tracks, skipped: points - taken };
}

function faultOf([longitude = Number.NaN, latitude = Number.NaN, height]: readonly number[]) {
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) return "bad place";
  if (height !== undefined && !(height >= heightsOnEarth.lowest && height <= heightsOnEarth.highest))
    return "bad height";
  return undefined;
}

function shapeProblem(document: Document): GpxProblem | undefined {
  const count = (name: string): number => document.getElementsByTagName(name).length;
  const points = count("trkpt") + count("rtept");
  if (points > MOST_POINTS) return { type: "too many points", count: points, allowed: MOST_POINTS };
  const tracks = count("trk") + count("rte");
  if (tracks > MOST_TRACKS) return { type: "too many tracks", count: tracks, allowed: MOST_TRACKS };
  if (count("trkseg") > MOST_SEGMENTS) return { type: "bad order" };
  const isMisplaced = ["trk>trkseg", "trkseg>trkpt", "rte>rtept", "gpx>trk", "gpx>rte"].some((pair) => {
    const [parent, child] = pair.split(">");
    return [...document.getElementsByTagName(child ?? "")].some(
      (element) => element.parentElement?.localName !== parent,
    );
  });
  return isMisplaced ? { type: "bad order" } : undefined;
}

function refuse(problem: GpxProblem): GpxFile {
  return { ok: false, problem };
}
