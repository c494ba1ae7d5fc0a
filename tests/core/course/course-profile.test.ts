import { readFileSync } from "node:fs";
import geodesic from "geographiclib-geodesic";
import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { courseFacts, proposedSteepPart, reversedProfile } from "#core/course/course-facts.ts";
import type { TrackPoint, TrackSegments } from "#core/course/track.ts";
import { type TrackProfile, trackProfile } from "#core/course/track-profile.ts";
import { courseProfileSchema, MOST_PROFILE_POINTS } from "#core/weekend/course-shape.ts";
import { demoCourse } from "#scenarios/course/demo-course.ts";
import { inventedCourse } from "#scenarios/course/invented-course.ts";

/** A straight line southwards, of points at the distances given; Karney's own direct solution sets them. */
function line(distances: readonly number[], height: (at: number) => number | undefined): readonly TrackPoint[] {
  return distances.map((at) => {
    const { lat2 = 0, lon2 = 0 } = geodesic.Geodesic.WGS84.Direct(-48.5, -124.25, 180, at);
    return { latitude: lat2, longitude: lon2, height: height(at) };
  });
}

const everyTen = (length: number) => Array.from({ length: length / 10 + 1 }, (_, index) => index * 10);

function profileOf(segments: TrackSegments): Extract<TrackProfile, { ok: true }> {
  const made = trackProfile(segments);
  if (!made.ok) throw new Error(made.problem.type);
  return made;
}

const factsOf = (segments: TrackSegments) => courseFacts(profileOf(segments).profile);

describe("a profile of a recorded track", () => {
  test("has the length that the line was laid out with, and keeps an even slope as it is", () => {
    const facts = factsOf([line(everyTen(1000), (at) => 2000 - 0.08 * at)]);
    // Worked out from the triangle: 80 m of fall over 1000 m horizontally are a slope of 1003.19489632 m.
    expect(facts.length).toBeCloseTo(1000, 6);
    expect(facts.drop).toBeCloseTo(80, 6);
    expect(facts.slopeLength).toBeCloseTo(1003.19489632, 2);
    expect(facts.meanGradient).toBeCloseTo(0.08, 6);
    expect((Math.atan(facts.meanGradient) * 180) / Math.PI).toBeCloseTo(4.5739212599, 4);
    expect(facts.climb).toBe(0);
    expect(facts.steepShare).toBe(0);
  });

  test("finds the steep share of a course of known stretches, to the length of its smoothing", () => {
    // 300 m at 10 %, 400 m at 40 %, 300 m at 10 %: 0.4 of it is steep.
    const height = (at: number) => 2000 - 0.1 * at - 0.3 * Math.min(400, Math.max(0, at - 300));
    const facts = factsOf([line(everyTen(1000), height)]);
    expect(facts.drop).toBeCloseTo(220, 6);
    expect(facts.steepShare).toBeCloseTo(0.4, 1);
    expect(facts.steep).toHaveLength(1);
    expect(facts.steepest.gradient).toBeCloseTo(0.4, 6);
  });

  test("does not make walls of the wandering of a receiver: an even slope of 20 % stays without a steep piece", () => {
    const noise = [0.9, -1.1, 0.4, -0.7, 1.2, -0.3, -0.9, 0.5];
    const height = (at: number) => 2000 - 0.2 * at + (noise[(at / 5) % 8] ?? 0);
    const distances = Array.from({ length: 401 }, (_, index) => index * 5);
    const raw = line(distances, height);
    const steepest = raw.slice(1).map((point, index) => ((raw[index]?.height ?? 0) - (point.height ?? 0)) / 5);
    expect(Math.max(...steepest)).toBeGreaterThan(0.5);
    expect(factsOf([raw]).steepShare).toBe(0);
  });

  test("counts what goes up on the way: climb, and drop and climb as all that goes down", () => {
    const height = (at: number) =>
      at <= 500 ? 500 - 0.2 * at : at <= 700 ? 400 + 0.1 * (at - 500) : 420 - 0.2 * (at - 700);
    const facts = factsOf([line(everyTen(1200), height)]);
    expect(facts.drop).toBeCloseTo(180, 6);
    expect(facts.climb).toBeGreaterThan(12);
    expect(facts.climb).toBeLessThanOrEqual(20);
  });

  test("bridges a gap between segments by the straight line and tells it; a point without a height counts for the distance", () => {
    const height = (at: number) => (at === 100 ? undefined : 900 - 0.2 * at);
    const made = profileOf([line([0, 50, 100, 200], height), line([260, 300, 400], height)]);
    expect(made.filled).toMatchObject({ gaps: 1, withoutHeight: 1 });
    expect(made.filled.gapLength).toBeCloseTo(60, 6);
    expect(courseFacts(made.profile)).toMatchObject({ length: 400, drop: 80 });
  });

  test("takes the mean of the heights of a receiver that stands still, and lets no number become none", () => {
    const standing = line([0, 0, 0], () => 500).map((point, index) => ({ ...point, height: 499 + index }));
    const facts = factsOf([[...standing, ...line(everyTen(200).slice(1), (at) => 500 - 0.1 * at)]]);
    expect(facts.drop).toBeCloseTo(20, 6);
    expect(Object.values(facts).filter((value) => typeof value === "number" && !Number.isFinite(value))).toEqual([]);
  });

  test.each([
    ["no points at all", [], { type: "too short", length: 0 }],
    ["less than 100 m", [line([0, 50, 90], () => 5)], { type: "too short" }],
    ["no heights", [line([0, 500], () => undefined)], { type: "no height" }],
    ["one height", [line([0, 500], (at) => (at === 0 ? 5 : undefined))], { type: "no height" }],
    ["more than 50 km", [line([0, 50_001], () => 5)], { type: "too long" }],
  ] as const)("is refused with the reason for %s", (_of, segments, problem) => {
    expect(trackProfile(segments)).toMatchObject({ ok: false, problem });
  });

  test.each([100.5, 1234, 49_990])("of %s m fits a record", (length) => {
    const { profile } = profileOf([line([0, length], (at) => 2000 - 0.01 * at)]);
    expect(profile.points.length).toBeLessThanOrEqual(MOST_PROFILE_POINTS);
    expect(z.safeParse(courseProfileSchema, profile).success).toBe(true);
    expect(profile.points.at(-1)?.[0]).toBeCloseTo(length, 1);
  });

  test("ridden the other way falls where it rose, and turned twice is the same", () => {
    const { profile } = profileOf([line(everyTen(1230), (at) => 1000 + 0.3 * at)]);
    expect(courseFacts(profile)).toMatchObject({ drop: -369, steepShare: 0 });
    expect(courseFacts(reversedProfile(profile)).drop).toBe(369);
    expect(courseFacts(reversedProfile(profile)).steepShare).toBe(1);
    expect(reversedProfile(reversedProfile(profile))).toEqual(profile);
  });

  test("proposes a part in steps of 0.05", () => {
    expect([0, 0.024, 0.025, 0.5555, 0.99].map(proposedSteepPart)).toEqual([0, 0, 0.05, 0.55, 1]);
  });
});

describe("the invented course of the demo", () => {
  const invented = inventedCourse(demoCourse.name, demoCourse.seed);
  const file = readFileSync(new URL("../../../scenarios/kestrel-ridge.gpx", import.meta.url), "utf8");

  test("is in its file as it is calculated", () => {
    expect(file).toBe(invented.gpx);
  });

  test("gives back the length and drop that it was laid out with, and about its steep share", () => {
    const points = [...file.matchAll(/lat="(.+?)" lon="(.+?)"><ele>(.+?)</g)].map(([, lat, lon, height]) => ({
      latitude: Number(lat),
      longitude: Number(lon),
      height: Number(height),
    }));
    expect(points).toHaveLength(213);
    const facts = factsOf([points]);
    // Coordinates are rounded to 1 cm, heights wander by 0.8 m.
    expect(Math.abs(facts.length - invented.length)).toBeLessThan(0.5);
    expect(Math.abs(facts.drop - invented.drop)).toBeLessThan(1.7);
    expect(Math.abs(facts.steepShare - invented.steepShare)).toBeLessThan(0.08);
  });
});
