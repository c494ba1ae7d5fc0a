// jsdom's own files cannot be read; Node's are those of the browsers.
import { File } from "node:buffer";
import { readFileSync } from "node:fs";
import { createRoot } from "solid-js";
import { beforeEach, describe, expect, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { type CourseFile, createCourseFile, largestGpx } from "#client/pit/course/create-course-file.ts";
import { loadGpx } from "#client/pit/course/load-gpx.ts";
import { profileView } from "#client/pit/course/profile-view.ts";
import { readGpx } from "#client/pit/course/read-gpx.ts";
import { type CourseFormState, createCourseForm } from "#client/pit/create-course-form.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { courseKind } from "#core/weekend/record-kinds.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const demo = readFileSync("scenarios/kestrel-ridge.gpx", "utf8");

let team: TeamLedger;
let form: CourseFormState;
let file: CourseFile;

beforeEach(() => {
  team = teamLedger();
  enterCourse(team.writerFor("mia"));
  const mia = team.writerFor("mia");
  const device: Pick<Device, "ledger" | "write"> = {
    ledger: () => team.ledger,
    write: (entries, options) => mia.setMany(entries, options),
  };
  createRoot(() => {
    form = createCourseForm(device, "kestrel");
    file = createCourseFile({ profile: () => form.draft().profile, setProfile: form.setProfile });
  });
});

const fileOf = (content: string | Uint8Array, name = "course.gpx") =>
  new File([content], name) as unknown as globalThis.File;
const stored = () => settledValue(team.ledger.current(courseKind, "kestrel"));

/** A file with these tracks, each a list of points of latitude and height. */
function gpxOf(...tracks: readonly (readonly (readonly [latitude: number, height: number | string])[])[]): string {
  const body = tracks.map((points, index) => {
    const lines = points.map(([lat, ele]) => `<trkpt lat="${lat}" lon="-124"><ele>${ele}</ele></trkpt>`);
    return `<trk><name>Run ${index + 1}</name><trkseg>${lines.join("")}</trkseg></trk>`;
  });
  return `<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">${body.join("")}</gpx>`;
}

/** Downhill by 100 m over 556 m. */
const down = [
  [-48.5, 600],
  [-48.505, 500],
] as const;

describe("a course from a GPX file", () => {
  test("gives length, drop and a steep part to propose, and writes them only when the form is saved", async () => {
    await file.choose(fileOf(demo, "kestrel-ridge.gpx"));
    const profile = form.draft().profile;
    expect(profile).toBeDefined();
    expect(stored()?.profile).toBeUndefined();
    const view = profile && profileView(profile, []);
    expect(view?.facts.slice(0, 2)).toEqual([
      { name: "Length", value: "2120 m" },
      // The ground was laid out with a drop of 479.4 m.
      { name: "Drop", value: "479 m" },
    ]);
    expect(view?.described).toMatch(
      /^Height over the course: from 223\d m at the start to 175\d m at the finish, 2120 m on\. Steep at /,
    );
    form.setPart("steep", view?.proposal.part);
    form.setPart("jumpy", 1 - (view?.proposal.part ?? 0));
    form.setPart("wet", 0);
    expect(form.save(undefined)).toBe("Saved: course, profile.");
    expect(stored()).toMatchObject({ profile, mix: { steep: 0.55 } });
  });

  test("offers the tracks of a file to choose from, and gives back what was there before", async () => {
    const uphill = down.map(([lat, ele]) => [lat, 1100 - ele] as const);
    await file.choose(fileOf(gpxOf(down, uphill)));
    expect(file.state()).toMatchObject({ state: "read", names: ["Run 1", "Run 2"], chosen: 0 });
    const first = form.draft().profile;
    file.pick(1);
    const second = form.draft().profile;
    expect(second && profileView(second, []).uphill).toBe("100");
    expect(first && profileView(first, []).uphill).toBeUndefined();
    file.leave();
    expect(form.draft().profile).toBeUndefined();
  });

  test("stays when the next file is refused, and gives way to the last of two chosen at once", async () => {
    await file.choose(fileOf(demo));
    const profile = form.draft().profile;
    await file.choose(fileOf("no file of ours"));
    expect(form.draft().profile).toEqual(profile);
    await Promise.all([file.choose(fileOf(demo, "first.gpx")), file.choose(fileOf(gpxOf(down), "second.gpx"))]);
    expect(file.state()).toMatchObject({ file: "second.gpx" });
    file.leave();
    expect(form.draft().profile).toBeUndefined();
  });

  test("tells gaps and points without a height or a place", async () => {
    const text = demo
      .replace("<ele>2235.0</ele>", "")
      .replace(/(<trkpt [^\n]+\n\s+)(<trkpt)/, "$1</trkseg><trkseg>$2")
      .replace(/(<\/trkseg>\s*<\/trk>)/, '<trkpt lat="here" lon="there"/>$1');
    await file.choose(fileOf(text.replace(/<trkseg>\s*<trkpt ([^>]+)><\/trkpt>\s*<\/trkseg>/, "")));
    expect(file.state()).toMatchObject({ state: "read", notes: [expect.stringContaining("without a place")] });
    await file.choose(
      fileOf(
        gpxOf(down)
          .replace("</gpx>", "")
          .replace(
            "</trk>",
            `<trkseg>${'<trkpt lat="-48.506" lon="-124"/><trkpt lat="-48.507" lon="-124"><ele>480</ele></trkpt>'}</trkseg></trk></gpx>`,
          ),
      ),
    );
    expect(file.state()).toMatchObject({
      notes: ["One gap in the track, bridged by straight lines of 111 m in all.", "One point has no height."],
    });
  });

  test("reads a planned route too", () => {
    const route = gpxOf(down)
      .replaceAll("trkpt", "rtept")
      .replaceAll(/<\/?trkseg>/g, "")
      .replaceAll("trk>", "rte>");
    expect(readGpx(route)).toMatchObject({ ok: true, tracks: [{ kind: "route", name: "Run 1" }] });
  });

  test.each([
    ["no XML", "PK\u0003\u0004", "cannot be read as XML"],
    ["a broken end", demo.slice(0, 4000), "cannot be read as XML"],
    ["something else than GPX", "<kml><Document/></kml>", "The file holds “kml”, not GPX"],
    ["no track", gpxOf(), "no track and no route"],
    ["one point", gpxOf([[-48.5, 600]]), "no track and no route"],
    ["a latitude that is none", gpxOf(down, [...down, [-91, 5]]), "Track 2, point 3: latitude goes from"],
    [
      "a height that is none",
      gpxOf([...down, [-48.6, 123456]]),
      "Track 1, point 3: its height is outside -500 to 9000 m",
    ],
    [
      "tracks within tracks",
      gpxOf(down).replace("<trkseg>", "<trk><trkseg>").replace("</trkseg>", "</trkseg></trk>"),
      "within each other",
    ],
    ["51 tracks", gpxOf(...Array.from({ length: 51 }, () => down)), "51 tracks; 50 are allowed"],
    ["50001 points", gpxOf(Array.from({ length: 50_001 }, () => down[0])), "50001 points; 50000 are allowed"],
    [
      "entities that blow up",
      `<!DOCTYPE gpx [<!ENTITY a "aaaaaaaa"><!ENTITY b "&a;&a;&a;">]>${demo.slice(38)}`,
      "declares a document type",
    ],
    [
      "an entity from another file",
      `<!doctype gpx [<!entity x SYSTEM "file:///etc/hostname">]>${demo.slice(38)}`,
      "declares a document type",
    ],
  ])("is refused with %s, in a sentence, and nothing is changed", async (_what, text, words) => {
    await file.choose(fileOf(gpxOf(down)));
    file.leave();
    await file.choose(fileOf(text));
    const state = file.state();
    expect(state.state === "refused" && state.sentence).toContain(words);
    expect(form.draft().profile).toBeUndefined();
  });

  test.each([
    ["no heights", gpxOf(down).replaceAll(/<ele>.*?<\/ele>/g, ""), "Run 1 has no heights"],
    ["too little ground", gpxOf([down[0], [-48.5005, 590]]), "Run 1 is 55 m long; it takes 100 m"],
    ["too much of it", gpxOf([down[0], [-49.5, 590]]), "m long; a course has at most 50000 m"],
  ])("says of a track with %s why it has no profile, and another one can be chosen", async (_what, text, words) => {
    await file.choose(fileOf(text));
    const state = file.state();
    expect(state.state === "read" && state.problem).toContain(words);
    expect(form.draft().profile).toBeUndefined();
  });

  test("is not opened when it is too large, not text, or its reader cannot be had", async () => {
    await file.choose({ name: "day.gpx", size: largestGpx + 1 } as globalThis.File);
    expect(file.state()).toMatchObject({ sentence: expect.stringContaining("8.1 MB; 8 MB are allowed") });
    await file.choose(fileOf(new Uint8Array([0x3c, 0xff, 0xfe])));
    expect(file.state()).toMatchObject({ sentence: expect.stringContaining("not text in UTF-8") });
    const far = createRoot(() =>
      createCourseFile({ profile: () => undefined, setProfile: form.setProfile, load: async () => undefined }),
    );
    await far.choose(fileOf(demo));
    expect(far.state()).toMatchObject({ sentence: expect.stringContaining("not on this device yet") });
    expect(await loadGpx()).toBeDefined();
  });
});

describe("named sections", () => {
  const rocks = { id: "rocks", name: "Rock garden", from: 300, to: 420 };
  const woods = { id: "woods", name: "Woods", from: 100, to: 300 };

  test("are written in the order of the course, those without ends last, and come back", () => {
    form.setSections([{ id: "jump", name: " Big jump ", from: undefined, to: undefined }, rocks, woods]);
    expect(form.save(undefined)).toBe("Saved: sections.");
    expect(stored()?.sections).toEqual([woods, rocks, { id: "jump", name: "Big jump" }]);
  });

  test.each([
    ["no name", [{ ...rocks, name: " " }], "Section 1: give it a name"],
    ["one name twice", [rocks, { ...woods, name: "Rock garden" }], "Two sections are called Rock garden"],
    ["one end", [{ ...rocks, to: undefined }], "Rock garden: enter both its ends, or neither"],
    ["the ends exchanged", [{ ...rocks, from: 500 }], "it ends at 420 m, which is not after 500 m"],
  ])("are refused with %s, and stay as they were typed", (_what, typed, words) => {
    form.setSections(typed);
    expect(form.save(undefined)).toBeUndefined();
    expect(form.problem()).toContain(words);
    expect(form.draft().sections).toEqual(typed);
    expect(stored()?.sections).toBeUndefined();
  });

  test("are refused beyond the end of the course that is known", () => {
    form.setProfile({
      points: [
        [0, 300],
        [400, 200],
      ],
    });
    form.setSections([rocks]);
    expect(form.save(undefined)).toBeUndefined();
    expect(form.problem()).toContain("ends at 420 m, but the course ends at 400 m");
  });

  test("leave the mix and the profile that somebody else saved meanwhile", () => {
    const theirs = { mix: { steep: 0, jumpy: 0, wet: 1 }, altitude: { value: 300, unit: "m" } } as const;
    written(team.writerFor("nils").set(courseKind, "kestrel", theirs));
    form.setSections([rocks]);
    expect(form.save(undefined)).toBe("Saved: sections.");
    expect(stored()).toEqual({ ...theirs, sections: [rocks] });
  });

  test("that two have named at once are told once; what was not touched here is not taken along", () => {
    const theirs = { mix: { steep: 0, jumpy: 0, wet: 1 }, altitude: { value: 300, unit: "m" }, sections: [woods] };
    written(team.writerFor("nils").set(courseKind, "kestrel", theirs as never));
    form.setSections([rocks]);
    expect(form.save(undefined)).toBeUndefined();
    expect(form.problem()).toContain("Somebody else has changed the sections");
    expect(form.save(undefined)).toBe("Saved: sections.");
    expect(stored()).toMatchObject({ mix: { wet: 1 }, sections: [rocks] });
  });
});
