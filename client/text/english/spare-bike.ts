/** English texts of a rider's bikes: which is ridden, a setup copied to another, and a part moved between them. */
import type { CopyOutcome, CopyRow } from "#core/planning/copy-setup.ts";
import type { ComparedDimension } from "#core/planning/part-differences.ts";
import type { Part } from "#core/team/part.ts";
import type { Place } from "#core/team/place.ts";
import { settingsText } from "./settings-count.ts";

const placeNames = {
  fork: "fork",
  shock: "shock",
  "front-tyre": "front tyre",
  "rear-tyre": "rear tyre",
} satisfies Record<Place, string>;

export const spareBike = {
  title: (rider: string) => `Bikes of ${rider}`,
  link: (bike: string, count: number) => (count > 1 ? `On ${bike}, 1 of ${count} bikes` : `On ${bike}`),
  backToBench: "To the bench",
  ridden: "Which bike is ridden",
  riddenAbout:
    "Setup sheet, advice, runs and the rider's own phone go by the bike that is ridden. Say it as soon as the rider changes bikes.",
  isRidden: "Ridden now",
  ride: (bike: string) => `From now on: ${bike}`,
  rides: (rider: string, bike: string) => `${rider} rides ${bike} now`,
  firstRide: "The first ride on another bike, or after a part was changed, is slow and short.",
  noPart: "no part",
  inDispute: "in dispute",
  part: (place: Place, name: string) => `${placeNames[place]}: ${name}`,
  disputes: {
    title: (place: Place, bike: string) => `Which ${placeNames[place]} is on ${bike}?`,
    about: "Different things were said. Look at the bike, then say which one it is. Until then it has none here.",
    says: (part: string, who: string, when: string) => `${part}: put there by ${who}, ${when}`,
    entered: (part: string) => `${part}: entered with this bike`,
    isOn: (part: string) => `${part} is on it`,
    isElsewhere: (part: string) => `${part} is on no bike`,
    settled: (part: string, bike: string) => `Looked at the bike: ${part} is on ${bike}`,
    settledAside: (part: string) => `Looked at the bike: ${part} is on no bike`,
    line: (place: Place, bike: string) => `Which ${placeNames[place]} is on ${bike}: different things were said`,
  },
  copy: {
    title: "Copy the setup to another bike",
    from: "From",
    to: "To",
    bike: (bike: string, rider: string) => `${bike} (${rider})`,
    isTheSame: "Choose two different bikes.",
    atTheBench: "Pressures as they read at the bench of the session that is chosen.",
    asTyped: "Pressures as they were typed: the conditions of the session are not entered.",
    differencesTitle: "What is different on the other bike",
    noDifferences: "Both bikes have parts of the same data.",
    adjuster: "Adjuster",
    value: "Would be set",
    now: "On it now",
    outcome: "What becomes of it",
    unknown: "not known",
    inDispute: "in dispute",
    outcomes: {
      copied: "Can be set.",
      same: "Is set like that already.",
      "no adjuster": "Left out: the other bike has no such adjuster.",
      "only there": "Stays as it is: the first bike has no such adjuster.",
      "in dispute": "Left out: it is in dispute. Look at the first bike.",
      "not known": "Left out: it is not known on the first bike.",
    } satisfies Record<Exclude<CopyOutcome["type"], "refused">, string>,
    refused: (why: string) => `Refused. ${why}`,
    reported: "The rider said so; no mechanic has seen it.",
    measure: {
      sag: "The same number is another spring here: measure the sag.",
      damping: "The same clicks may damp otherwise here: feel it in a short run.",
    } satisfies Record<NonNullable<CopyRow["measure"]>, string>,
    sameSag: (adjuster: string, value: string) =>
      `${adjuster}: about ${value} would give the same share of the stroke as sag, worked out from the data of both bikes. It is not copied. Measure the sag before you trust it.`,
    range: (from: string, to: string) => `Range ${from}, there ${to}.`,
    span: (low: string, high: string) => `${low} to ${high}`,
    step: (from: string, to: string) => `Steps of ${from}, there ${to}.`,
    perClick: (from: string, to: string) => `Damping per click ${from}, there ${to}.`,
    percent: (value: string) => `${value} %`,
    notMeasured: "not measured",
    order: "Set it in this order, then say that it is done: it keeps every limit after every step.",
    take: (count: number, bike: string) => `${settingsText(count)} on ${bike}: it is done`,
    nothing: "There is nothing to set on it.",
    leave: "Nothing is written until you say that it is done.",
    done: (count: number, from: string, to: string) => `Copied from ${from}: ${settingsText(count)} on ${to}`,
    why: (bike: string) => `Copied from ${bike}.`,
  },
  differences: {
    noPart: (place: Place, bike: string) => `${bike} has no ${placeNames[place]}.`,
    names: (place: Place, from: string, to: string) => `The ${placeNames[place]} is ${to}, not ${from}.`,
    archetypes: (place: Place, from: string, to: string) => `The ${placeNames[place]} has ${to}, not ${from}.`,
    archetype: {
      air: "an air spring with one positive chamber",
      "two-chamber air": "an air spring with a main and a secondary chamber",
      coil: "a coil spring",
      tyre: "a tyre",
    } satisfies Record<Part["archetype"], string>,
    dimension: (what: string, from: string, to: string) => `${what}: ${to}, not ${from}.`,
    ofPlace: (place: Place, what: string) => `${what} of the ${placeNames[place]}`,
    leverage: (from: string, to: string) => `Leverage ratio of the shock: ${to}, not ${from}.`,
    unknown: "not known",
    dimensions: {
      stroke: "Travel",
      positiveArea: "Positive area",
      negativeArea: "Negative area",
      positiveVolume: "Positive volume",
      negativeVolume: "Negative volume",
      equalisingStroke: "Stroke at which the chambers equalise",
      secondaryVolume: "Secondary volume",
      spacerVolume: "Volume of a spacer",
      threadPitch: "Thread of the preload collar",
      tyreMarkedMaximum: "Maximum marked on the tyre",
      rimMarkedMaximum: "Maximum marked on the rim",
      forkAngle: "Angle of the fork",
      sprungMass: "Sprung mass of the bike",
      rearWheelTravel: "Travel of the rear wheel",
      riderMass: "Mass of the rider",
    } satisfies Record<ComparedDimension, string>,
  },
  move: {
    title: "A part: its history, and moving it",
    part: "Part",
    option: (part: string, bike: string) => `${part}, on ${bike}`,
    optionAside: (part: string) => `${part}, on no bike`,
    to: "Move it to",
    choose: "Choose where",
    aside: "No bike, kept aside",
    swapLegend: (part: string) => `There is a part in its place: ${part}`,
    swap: { swap: "The two change places", aside: "That one is kept aside" },
    airLegend: "The air in what is moved",
    air: { kept: "stayed in", released: "was released" },
    needsPlace: "Choose where the part goes.",
    needsAir: "Say whether the air stayed in the part.",
    goesAlong:
      "Hours of riding, services and the settings on the part go along. What nobody knows of it is not known on its new bike either; a tyre that was taken off has no known pressure.",
    cautions: [
      "Release all air before a part is opened. Never loosen a part while its spring is under load.",
      "Release a tyre's air before it is taken off the rim.",
      "Tighten by the maker's torques, and let a qualified mechanic look at worn or damaged parts.",
    ],
    save: "It is moved",
    done: (part: string, bike: string) => `Moved: ${part} to ${bike}`,
    doneAside: (part: string) => `Moved: ${part} is kept aside`,
    why: (part: string) => `Came with the part: ${part}.`,
    whyGone: (part: string) => `Not known any more: ${part} was moved.`,
    problems: {
      unknownPart: "The part is not known any more.",
      unknownBike: "The bike is not known any more.",
      samePlace: "The part is there already.",
      notThere: "The part is not where it was: somebody has moved it, or says something else. Look at the bikes.",
      placeInDispute: (place: Place, bike: string) =>
        `Which ${placeNames[place]} is on ${bike} is in dispute. Settle that first.`,
      settingsInDispute: (bike: string, adjusters: string) =>
        `On ${bike} these are in dispute: ${adjusters}. Look at the bike and settle that first.`,
    },
    historyTitle: (part: string) => `History of ${part}`,
    stay: (bike: string, from: string | undefined, until: string | undefined) =>
      until === undefined
        ? from === undefined
          ? `${bike}, ever since it is known`
          : `${bike}, since ${from}`
        : from === undefined
          ? `${bike}, until ${until}`
          : `${bike}, from ${from} until ${until}`,
    noBike: "On no bike",
    placeInDispute: "Where it is, is in dispute: its history is shown again once that is settled.",
    hours: (work: string, hours: string) => `${work}: ${hours} h since the last time`,
    noChanges: "No settings were written for it here.",
    changes: (count: number) => (count === 1 ? "1 setting was made" : `${count} settings were made`),
    change: (adjuster: string, value: string, who: string, when: string) => `${adjuster} ${value}, ${who}, ${when}`,
    more: (count: number) => `and ${count} earlier`,
  },
  undo: {
    moved: (part: string) => `moved ${part}`,
    rides: (bike: string) => `rides ${bike}`,
    copied: (count: number) => `copied, ${settingsText(count)}`,
  },
} as const;
