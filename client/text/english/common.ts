/** English texts that all workplaces share. */
import type { AdjusterKind } from "#core/team/adjuster.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { Ground } from "#core/team/ground.ts";
import type { Role } from "#core/team/people.ts";
import type { Place } from "#core/team/place.ts";

export const common = {
  name: "Pitslate",
  loading: "Reading this device's copy…",
  loadingScreen: "Opening the screen…",
  notLoaded:
    "This screen could not be loaded from the server. What is on this device is safe. Try again when the server is reached.",
  fault: "This screen has a fault and cannot go on. What was saved is safe. Open it again, or go back to the start.",
  again: "Try again",
  toStart: "To the start",
  back: "Back",
  language: "Language",
  find: "Find",
  units: {
    title: "Units",
    hint: "What you read and type is in these units, on this device. Without a choice a value stays in the unit it was typed in.",
    of: { pressure: "Pressure", mass: "Mass", temperature: "Temperature" },
  },
  save: "Save",
  cancel: "Cancel",
  close: "Close",
  undo: "Undo",
  more: "Up by one step",
  less: "Down by one step",
  notKnown: "not known",
  theme: { sun: "Sun", dark: "Dark", switchTo: (name: string) => `Switch to the ${name.toLowerCase()} screen` },
  update: {
    waiting: "A newer version of Pitslate is ready. Finish what you are typing first.",
    take: "Use it now",
  },
  whoAreYou: {
    title: "Who are you?",
    hint: "What you write carries your name. You can change this at any time.",
    none: "No team on this device yet. It comes from the pit laptop as soon as it is reached.",
    change: "Change",
    holder: (name: string) => `${name} has this device`,
  },
  roles: { mechanic: "Mechanic", rider: "Rider", manager: "Manager" } satisfies Record<Role, string>,
  workplaces: { mechanic: "Pit", rider: "Trackside", manager: "Review" } satisfies Record<Role, string>,
  courseTypes: { steep: "steep", jumpy: "jumpy", wet: "wet" } satisfies Record<CourseType, string>,
  grounds: { "dry dust": "dry dust", dry: "dry", damp: "damp", wet: "wet", mud: "mud" } satisfies Record<
    Ground,
    string
  >,
  places: {
    fork: "Fork",
    shock: "Shock",
    "front-tyre": "Front tyre",
    "rear-tyre": "Rear tyre",
  } satisfies Record<Place, string>,
  adjusters: {
    "main-pressure": "Main pressure",
    "secondary-pressure": "Secondary pressure",
    "volume-spacers": "Volume spacers",
    "spring-rate": "Spring rate",
    preload: "Preload",
    rebound: "Rebound",
    "low-speed-compression": "Low-speed compression",
    "high-speed-compression": "High-speed compression",
    "tyre-pressure": "Pressure",
  } satisfies Record<AdjusterKind, string>,
  /** "Fork, main pressure". */
  adjusterAt: (place: string, adjuster: string) => `${place}, ${adjuster.toLowerCase()}`,
  /** Stands before each caution. */
  caution: "Caution.",
  /** Units of counts beside a number. */
  counts: {
    clicks: (value: number) => (Math.abs(value) === 1 ? "click" : "clicks"),
    turns: (value: number) => (Math.abs(value) === 1 ? "turn" : "turns"),
    spacers: (value: number) => (Math.abs(value) === 1 ? "spacer" : "spacers"),
  },
  stepper: {
    allowed: (minimum: string, maximum: string) => `${minimum} to ${maximum}`,
    outside: (label: string, value: string, allowed: string) => `${label}: ${value} is outside ${allowed}.`,
    noNumber: (label: string, typed: string, allowed: string) =>
      `${label}: "${typed}" is no number. Allowed: ${allowed}.`,
  },
  status: {
    loading: "Reading this device's copy",
    onServer: "On the server",
    onThisDevice: (waiting: number) =>
      waiting === 0
        ? "On this device. Asking the server what it has"
        : `On this device only: ${entries(waiting)} not yet on the server`,
    offline: (since: string, waiting: number) =>
      waiting === 0
        ? `Offline since ${since}. All of yours is on the server`
        : `Offline since ${since}. ${entries(waiting)} on this device only`,
    saving: "Saving on this device",
    notSaved: (waiting: number) =>
      waiting === 0
        ? "Not saved on this device, but on the server"
        : `Not saved on this device: keep this page open. ${entries(waiting)} nowhere else yet`,
    unreadable: (count: number) => `${entries(count)} that this version cannot read`,
  },
  holding: {
    unnamed: (count: number) => (count === 1 ? "1 device without a name" : `${count} devices without a name`),
    sentence: (where: { here: boolean; server: boolean; with: string | undefined }) => {
      const own = where.here ? "" : "Not saved on this device. ";
      if (where.server)
        return `${own}On the server${where.with ? `, and with ${where.with}` : "; no other device yet"}.`;
      return where.with
        ? `${own}Not yet on the server; with ${where.with}.`
        : `${own}${where.here ? "On this device only." : "Nowhere else yet."}`;
    },
  },
} as const;

function entries(count: number): string {
  return count === 1 ? "1 entry" : `${count} entries`;
}
