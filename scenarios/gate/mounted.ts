import type { RiderBike } from "#core/team/roster.ts";
import type { ScenarioTeam } from "#scenarios/schema/team.ts";

/** A rider of a scenario's team with bike and parts, or undefined while one of them is missing. */
export function mountedIn(team: ScenarioTeam, riderId: string): RiderBike | undefined {
  const rider = own(team.riders, riderId);
  const bike = rider && own(team.bikes, rider.bike);
  if (!rider || !bike) return undefined;
  const parts = Object.fromEntries(
    Object.entries(bike.parts).flatMap(([place, id]) => {
      const part = id === undefined ? undefined : own(team.parts, id);
      return part?.place === place ? [[place, part]] : [];
    }),
  );
  return { riderId, rider, bikeId: rider.bike, bike, parts };
}

/** The entry of a table under a key that came from a file, never one that every object has. */
export function own<Value>(table: Readonly<Record<string, Value>>, key: string): Value | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}
