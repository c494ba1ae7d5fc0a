/** What the schema cannot see of a team: names that lead nowhere, and values that the bikes cannot have. */
import { courseTypes } from "#core/team/course-type.ts";
import { places } from "#core/team/place.ts";
import type { ScenarioTeam } from "#scenarios/schema/team.ts";
import { limitSentences } from "./limit-sentence.ts";
import { mountedIn, own } from "./mounted.ts";
import { baselineInWords } from "./place-in-words.ts";

/** One sentence for each thing that does not fit together. */
export function teamProblems(team: ScenarioTeam): readonly string[] {
  return [...memberProblems(team), ...riderProblems(team), ...bikeProblems(team), ...baselineProblems(team)];
}

/** "there is no rider "x"; allowed: …", for a name that leads nowhere. */
export function unknownName(what: string, name: string, known: readonly string[]): string {
  return `there is no ${what} "${name}"; there are ${known.join(", ") || "none"}.`;
}

function memberProblems({ members, riders }: ScenarioTeam): readonly string[] {
  return Object.entries(members).flatMap(([id, member]) => {
    if (member.role === "rider" && member.rider === undefined)
      return [`Member ${id}: a rider's entry names the rider.`];
    if (member.rider === undefined || own(riders, member.rider)) return [];
    return [`Member ${id}: ${unknownName("rider", member.rider, Object.keys(riders))}`];
  });
}

function riderProblems({ riders, bikes }: ScenarioTeam): readonly string[] {
  return Object.entries(riders).flatMap(([id, rider]) => {
    const bike = own(bikes, rider.bike);
    if (!bike) return [`Rider ${id}: ${unknownName("bike", rider.bike, Object.keys(bikes))}`];
    return bike.rider === id ? [] : [`Rider ${id}: the bike ${rider.bike} is that of ${bike.rider}.`];
  });
}

function bikeProblems({ riders, bikes, parts }: ScenarioTeam): readonly string[] {
  return Object.entries(bikes).flatMap(([id, bike]) => {
    const owner = own(riders, bike.rider) ? [] : [unknownName("rider", bike.rider, Object.keys(riders))];
    const mounted = places.flatMap((place) => {
      const partId = bike.parts[place];
      if (partId === undefined) return [];
      const part = own(parts, partId);
      if (!part) return [unknownName("part", partId, Object.keys(parts))];
      return part.place === place ? [] : [`the part ${partId} belongs at the ${part.place}, not at the ${place}.`];
    });
    return [...owner, ...mounted].map((sentence) => `Bike ${id}: ${sentence}`);
  });
}

function baselineProblems(team: ScenarioTeam): readonly string[] {
  return Object.entries(team.baselines).flatMap(([riderId, baselines]) => {
    if (!own(team.riders, riderId)) {
      return [`Baselines of ${riderId}: ${unknownName("rider", riderId, Object.keys(team.riders))}`];
    }
    const mounted = mountedIn(team, riderId);
    return courseTypes.flatMap((type) => {
      const baseline = baselines[type];
      const place = baselineInWords(riderId, type);
      // Without the bike there is nothing to judge the values by, and that it is missing has been said.
      if (!baseline || !mounted) return [];
      if (baseline.bike !== mounted.bikeId) {
        return [`${place}: it is for the bike ${baseline.bike}, and the rider's bike is ${mounted.bikeId}.`];
      }
      return limitSentences(place, mounted, baseline.values);
    });
  });
}
