/** English texts of where something stands in a file, and why it cannot be taken in. */
export const dataProblems = {
  place: {
    line: (line: number) => `Line ${line}`,
    lines: (first: number, last: number) => `Line ${first} to ${last}`,
    /** What the lines speak of, after them. */
    of: {
      rider: (lines: string, name: string) => `${lines}, rider "${name}"`,
      baseline: (lines: string, name: string) => `${lines}, baseline ${name}`,
      adjuster: (lines: string, name: string) => `${lines}, ${name}`,
      person: (lines: string, name: string) => `${lines}, ${name}`,
    },
    kind: (kind: string) => `"${kind}"`,
    value: (kind: string, key: string) => `${kind} "${key}"`,
  },
  row: {
    givenTwice: "It is given twice; each may be given once.",
    disputedHere: "It is disputed here. Settle that first, then take the file in again.",
    disputedInFile: "It is disputed in the file: there is no one value to take in. Enter what is so by hand.",
    nothingToLeanOn: (kind: string, key: string) =>
      `There is no ${kind} "${key}", neither here nor in the file as far as it can be taken in.`,
    bikeOfAnother: (bike: string, owner: string) => `The bike ${bike} is that of ${owner}.`,
    partOfAnotherPlace: (part: string, place: string, given: string) =>
      `The part ${part} belongs elsewhere: its place is “${place}”, not “${given}”.`,
    noSettingKey: "Its key is not of the form rider/bike/place.adjuster.",
    adjusterTwice: (adjuster: string, baseline: string) => `${adjuster} is given twice for ${baseline}.`,
    lineRefused: "One of its lines is refused, so none is taken.",
    noSettledBaseline:
      "There is no such baseline that is settled here. A new one needs the mass, temperature and altitude it was found at: approve it from a weekend, or take it in as JSON.",
    unknownKind: (allowed: string) => `There is no such kind; allowed are ${allowed}.`,
    noObject: "What stands here is no object; allowed are values by key.",
    plateOfAnother: (plate: string, rider: string, said: string) =>
      `Plate ${plate} is ${rider} here, and the file says "${said}".`,
    plateOfSeveral: (plate: string, riders: string) => `More than one has plate ${plate} here: ${riders}.`,
    noRider: (who: string) => `Nobody of the team fits: ${who}.`,
    severalRiders: (who: string) => `More than one rider of the team fits: ${who}.`,
    plate: (plate: string) => `plate ${plate}`,
    nobodyNamed: "no plate and no name",
    noSessionChosen: (sessions: string) => `Choose the session that the times are of; there are ${sessions}.`,
    unknownSession: (said: string, sessions: string) =>
      `There is no session "${said}" in this weekend; there are ${sessions}.`,
    noSessions: "none",
    noTime: (said: string) =>
      `"${said}" is no time of a run; allowed is 1:23.456, 83.456 or 1'23"456, with a point or a comma, above 0 and at most 60 minutes.`,
    disputedRun: "A run of this rider in this session is disputed. Settle that first, then take the file in again.",
  },
  file: {
    notJson: "This file is not JSON, or it is cut off. Choose a file with the team's data.",
    otherFormat: (allowed: string) => `This is not a file with a team's data: its "format" has to be "${allowed}".`,
    otherVersion: (version: string, allowed: number) =>
      `This file has the version ${version}; this program reads version ${allowed}.`,
    noVersion: (allowed: number) => `This file has no version; this program reads version ${allowed}.`,
    noValues: 'This file has no "values"; allowed is an object of kinds.',
    tooManyValues: (most: number) => `This file holds more than ${most} values; take it in as several files.`,
    tooManyRows: (most: number) => `This table has more than ${most} rows; take it in as several files.`,
    otherTable: (allowed: string) =>
      `The first row does not name the columns of a table that can be taken in. Allowed: ${allowed}.`,
  },
} as const;
