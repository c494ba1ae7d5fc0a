/**
 * A new phone and the mechanic's laptop, which share no network: what the laptop has gets to the phone from screen to
 * camera. The cameras are Chromium's own, before which the film of the other device's screen runs.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { photograph, type Shot, writeFilm } from "./film.ts";
import { enter, type Person } from "./person.ts";
import { openPits, type Pits, screens } from "./pits.ts";

const folder = mkdtempSync(join(tmpdir(), "pitslate-film-"));
const FILM = join(folder, "screen.y4m");

let pits: Pits;
let mechanic: Person;
let phone: Person;
const hosts = new Set<string>();

beforeAll(async () => {
  pits = await openPits(FILM);
  mechanic = await pits.open("Kim Larch", screens.laptop);
  phone = await pits.openNew(screens.phone);
  for (const { page } of [mechanic, phone]) page.on("request", (request) => hosts.add(new URL(request.url()).hostname));
});

afterAll(async () => {
  await pits?.close();
  rmSync(folder, { recursive: true, force: true });
});

const press = (person: Person, name: string | RegExp) => person.tap(person.page.getByRole("button", { name }));
const follow = (person: Person, name: string) => person.tap(person.page.getByRole("link", { name, exact: true }));
const codeOf = (person: Person) => person.page.getByRole("img", { name: /^Code/ });

/**
 * Codes filmed beyond those that a screen says are needed: the whole comes back from any of them but once in 2^20 times
 * (`fountain.ts`). A screen shows codes without end, but a camera in a test sees a film over and over.
 */
const SURPLUS = 20;

/** The codes that a screen shows, as somebody steps through them, without those that are missed. */
async function filmed(person: Person, isMissed = (_index: number) => false): Promise<readonly Shot[]> {
  await codeOf(person).waitFor();
  const next = person.page.getByRole("button", { name: "Next code" });
  if ((await next.count()) === 0) return [await photograph(codeOf(person))];
  const needed = Number(/about (\d+) codes/.exec((await person.page.locator("main").textContent()) ?? "")?.[1]);
  const shots: Shot[] = [];
  for (let index = 0; shots.length < needed + SURPLUS; index++) {
    await next.click();
    if (!isMissed(index)) shots.push(await photograph(codeOf(person)));
  }
  return shots;
}

const everyThird = (index: number) => index % 3 === 1;

/** The screen of that name, from the choice of who holds the device on. */
async function open(person: Person, screen: "Hand over by codes" | "Take in by codes"): Promise<void> {
  await person.page.goto(`${person.network.origin}/`);
  await person.tap(person.page.getByRole("link", { name: "Hand over without a network" }).last());
  await follow(person, screen);
}

describe.sequential("a hand-off by codes", () => {
  test("the laptop, offline, reads with its camera what the new phone has, and answers in codes", async () => {
    const { page } = mechanic;
    await mechanic.syncSays("On the server");
    await page.evaluate(async () => void (await navigator.serviceWorker.ready));
    await page.reload();
    await mechanic.syncSays("On the server");
    mechanic.network.cut();
    await mechanic.syncSays("Offline since");
    await open(phone, "Take in by codes");
    writeFilm(FILM, await filmed(phone));
    await open(mechanic, "Hand over by codes");
    await press(mechanic, "Read with the camera");
    await mechanic.sees(/^\d+ entries are new for the other device\.$/);
  });

  test("the phone reads them though every third is missed, says what is new, and merges it", async () => {
    const shots = await filmed(mechanic, everyThird);
    expect(shots.length).toBeGreaterThan(SURPLUS + 4);
    writeFilm(FILM, shots);
    await press(phone, "It has read it: read the answer");
    // Looked for from before the start on: it stands there only until the last code is read.
    await Promise.all([phone.sees(/^\d+ of about \d+ codes read$/), press(phone, "Read with the camera")]);
    await phone.sees(/^\d+ entries new here$/);
    await phone.sees(/^Made by Kim Larch, /);
    await press(phone, "Merge it");
    await phone.sees(/^Merged: \d+ new entries are on this device\./);
  });

  test("the rider says who he is and changes a setting, and the laptop takes that in the same way", async () => {
    const { page } = phone;
    await page.goto(`${phone.network.origin}/`);
    await press(phone, "Rowan Alder");
    await page.getByRole("combobox", { name: "Weekend" }).selectOption({ label: "Kestrel Ridge Downhill" });
    await follow(phone, "I changed something myself");
    await phone.tap(page.getByRole("button", { name: /^Rebound/ }).first());
    await enter(page, /^Fork, rebound/, 9);
    await press(phone, "Save the change");
    await phone.sees(/Saved: Fork, rebound 9 clicks, reported by you/);
    await open(mechanic, "Take in by codes");
    writeFilm(FILM, await filmed(mechanic));
    await open(phone, "Hand over by codes");
    await press(phone, "Read with the camera");
    await phone.sees("1 entry is new for the other device.");
    const answer = await filmed(phone);
    expect(answer.length).toBe(1);
    writeFilm(FILM, answer);
    await press(mechanic, "It has read it: read the answer");
    await press(mechanic, "Read with the camera");
    await mechanic.sees("1 entry new here");
    await mechanic.sees("Rowan Alder: 1 entry");
    await press(mechanic, "Merge it");
    await mechanic.sees("Merged: 1 new entry is on this device.");
    await mechanic.page.goto(`${mechanic.network.origin}/pit`);
    await mechanic.sees("Reported change to confirm");
    await mechanic.syncSays("Offline since");
  });

  test("a code of the wrong side is left out in a sentence, and the camera ends with the screen", async () => {
    await open(phone, "Take in by codes");
    writeFilm(FILM, await filmed(phone));
    await press(phone, "It has read it: read the answer");
    await press(phone, "Read with the camera");
    await phone.sees("This code says what the other device has.");
    const track = await phone.page.locator("video").evaluateHandle((video: HTMLVideoElement) => {
      return (video.srcObject as MediaStream).getVideoTracks()[0];
    });
    expect(await track.evaluate((camera) => camera?.readyState)).toBe("live");
    await follow(phone, "Back");
    await phone.sees("Take in a file");
    expect(await track.evaluate((camera) => camera?.readyState)).toBe("ended");
  });

  test("a page that can load no more of itself says so, and that a file does it too", async () => {
    const late = await pits.openNew(screens.phone);
    await late.page.route(/by-codes/, (route) => route.abort());
    await open(late, "Take in by codes");
    await late.sees("The hand-off by codes could not be loaded from the server. Hand over by file instead.");
  });

  test("nothing was asked of anybody but the laptop", () => {
    expect([...hosts]).toEqual(["127.0.0.1"]);
  });
});
