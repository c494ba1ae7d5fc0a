/** The pits of a test: a pit laptop with the demo team, one browser, and people who open their devices in it. */
import { launchChromium } from "#scenarios/printing/chromium.ts";
import { openNewDevice, openPerson, type Person, type PersonOptions } from "./person.ts";
import { type PitLaptop, startPitLaptop } from "./pit-laptop.ts";

/** The screens of the people in these tests. */
export const screens = {
  laptop: { width: 1440, height: 900 },
  tablet: { width: 820, height: 1180 },
  phone: { width: 360, height: 740, hasTouch: true },
} as const;

export interface Pits {
  readonly laptop: Pick<PitLaptop, "log" | "port">;
  open(name: string, screen: Omit<PersonOptions, "browser" | "port">): Promise<Person>;
  /** A device that reaches the laptop for the program alone: it has no team, and nobody holds it. */
  openNew(screen: Omit<PersonOptions, "browser" | "port">): Promise<Person>;
  /** Closes the devices, the browser and the laptop. */
  close(): Promise<void>;
}

/** @param film what every camera shows, see {@link launchChromium} */
export async function openPits(film?: string): Promise<Pits> {
  const laptop = await startPitLaptop();
  const browser = await launchChromium(film).catch(async (error: unknown) => {
    await laptop.close();
    throw error;
  });
  const people: Person[] = [];
  return {
    laptop,
    open: async (name, screen) => {
      const person = await openPerson(name, { browser, port: laptop.port, ...screen });
      people.push(person);
      return person;
    },
    openNew: async (screen) => {
      const person = await openNewDevice({ browser, port: laptop.port, ...screen });
      people.push(person);
      return person;
    },
    close: async () => {
      await Promise.all(people.map((person) => person.close()));
      await browser.close();
      await laptop.close();
    },
  };
}
