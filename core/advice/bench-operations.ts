/**
 * The hand operations of one step at the bench, in order, with the readings to
 * expect. A closed list: the screen and the printout have the words.
 */
import { standardPressure } from "#core/physics/atmosphere.ts";
import { firstReading } from "#core/physics/pump.ts";
import { cubicMetres, gaugePascals, metres, type Volume } from "#core/quantity/quantity.ts";
import { fromSi, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { type AdjusterKind, type AdjusterPath, adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { MountedAdjuster } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { settable } from "./limits.ts";

export type BenchOperation =
  | { readonly do: "unload the wheel" | "clean around the valve" | "take the pump off fast" | "close the cap" }
  | { readonly do: "release all air" | "open the part" | "close the part" | "cycle the part" | "write it down" }
  | { readonly do: "turn to closed" | "unload the spring" }
  /** `expect` is the first reading, its loss to the hose counted; below `leakBelow` the chamber has lost air. */
  | { readonly do: "connect the pump"; readonly expect?: TypedQuantity; readonly leakBelow?: TypedQuantity }
  | { readonly do: "set the pressure"; readonly path: AdjusterPath; readonly to: TypedQuantity }
  /** After cycling, the pump goes on once more and should show this. */
  | { readonly do: "check again"; readonly expect: TypedQuantity }
  | { readonly do: "change the spacers"; readonly to: TypedQuantity }
  | { readonly do: "fit the spring"; readonly to: TypedQuantity }
  | { readonly do: "turn the collar"; readonly to: TypedQuantity }
  | { readonly do: "count the clicks"; readonly to: TypedQuantity };

/** The team's shock pump. */
export interface PumpTool {
  /** Volume of hose and gauge. */
  readonly hose: TypedQuantity;
  /** What its gauge may be off by. */
  readonly tolerance: TypedQuantity;
}

/** A usual shock pump. Common practice, no source; a team that has measured its own replaces it. */
export const DEFAULT_PUMP: PumpTool = { hose: { value: 3, unit: "ml" }, tolerance: { value: 1, unit: "psi" } };

/** Where the work is done and with what. */
export interface BenchWork {
  readonly bench: Surroundings;
  readonly pump: PumpTool;
}

/**
 * The operations that bring one adjuster from `from` (absent when not known) to `to`. `held` are the readings of the
 * part's other adjusters: opening it for spacers releases its air, which is then put back to them. With `moreToFill`
 * another chamber of the part comes next: it is cycled and checked when the last one has its air.
 */
export function benchOperations(
  found: MountedAdjuster,
  from: TypedQuantity | undefined,
  to: TypedQuantity,
  held: SetupValues,
  work: BenchWork,
  moreToFill = false,
): readonly BenchOperation[] {
  switch (found.adjuster.kind) {
    case "main-pressure":
    case "secondary-pressure":
      return chamberOperations(found, from, to, held, work, moreToFill);
    case "volume-spacers":
      return spacerOperations(found, to, held);
    case "spring-rate":
      return [
        { do: "unload the wheel" },
        { do: "unload the spring" },
        { do: "fit the spring", to },
        { do: "write it down" },
      ];
    case "preload":
      return [{ do: "unload the wheel" }, { do: "turn the collar", to }, { do: "write it down" }];
    case "rebound":
    case "low-speed-compression":
    case "high-speed-compression":
      return [{ do: "turn to closed" }, { do: "count the clicks", to }, { do: "write it down" }];
    case "tyre-pressure":
      return [{ do: "set the pressure", path: found.path, to }, { do: "close the cap" }, { do: "write it down" }];
  }
}

/** The first reading of the pump on a chamber that holds `reading`; undefined when the chamber's volume is not known. */
export function expectedReading(
  found: MountedAdjuster,
  reading: TypedQuantity,
  spacers: number,
  { bench, pump }: BenchWork,
): TypedQuantity | undefined {
  const chamberVolume = chamberVolumeOf(found, spacers);
  if (chamberVolume === undefined) return undefined;
  const shown = firstReading({
    chamberVolume,
    chamberPressure: gaugePascals(toSi(reading)),
    hoseVolume: cubicMetres(toSi(pump.hose)),
    ambient: standardPressure(metres(toSi(bench.altitude))),
  });
  return settable(found, fromSi(shown, found.adjuster.unit).value);
}

function chamberOperations(
  found: MountedAdjuster,
  from: TypedQuantity | undefined,
  to: TypedQuantity,
  held: SetupValues,
  work: BenchWork,
  moreToFill: boolean,
): readonly BenchOperation[] {
  const spacers = held[adjusterPath(found.place, "volume-spacers")]?.value ?? 0;
  const first = from && expectedReading(found, from, spacers, work);
  const again = expectedReading(found, to, spacers, work);
  return [
    { do: "unload the wheel" },
    { do: "clean around the valve" },
    {
      do: "connect the pump",
      ...(first && { expect: first, leakBelow: settable(found, first.value - toleranceIn(found, work)) }),
    },
    { do: "set the pressure", path: found.path, to },
    { do: "take the pump off fast" },
    ...(moreToFill ? [] : [{ do: "cycle the part" } as const]),
    ...(again && !moreToFill ? [{ do: "check again", expect: again } as const] : []),
    { do: "close the cap" },
    { do: "write it down" },
  ];
}

/** Releasing and filling: the higher chamber is filled first, so that the secondary one is above the main one throughout. */
function spacerOperations(found: MountedAdjuster, to: TypedQuantity, held: SetupValues): readonly BenchOperation[] {
  const chambers = (["secondary-pressure", "main-pressure"] satisfies AdjusterKind[]).flatMap((kind) => {
    const path = adjusterPath(found.place, kind);
    const reading = held[path];
    return reading ? [{ do: "set the pressure", path, to: reading } as const] : [];
  });
  return [
    { do: "unload the wheel" },
    { do: "release all air" },
    { do: "open the part" },
    { do: "change the spacers", to },
    { do: "close the part" },
    ...chambers,
    { do: "cycle the part" },
    { do: "write it down" },
  ];
}

/**
 * What the pump is joined to. The main chamber of a self-equalising spring is joined to the negative one at full
 * extension; the secondary chamber is alone behind its piston.
 */
function chamberVolumeOf({ part, adjuster }: MountedAdjuster, spacers: number): Volume | undefined {
  if (part.archetype !== "air" && part.archetype !== "two-chamber air") return undefined;
  const { geometry } = part;
  if (adjuster.kind === "secondary-pressure") {
    return geometry.secondaryVolume && cubicMetres(toSi(geometry.secondaryVolume));
  }
  const taken = geometry.spacerVolume ? spacers * toSi(geometry.spacerVolume) : 0;
  const negative = geometry.equalisingStroke && toSi(geometry.equalisingStroke) > 0 ? 0 : toSi(geometry.negativeVolume);
  const volume = toSi(geometry.positiveVolume) - taken + negative;
  return volume > 0 ? cubicMetres(volume) : undefined;
}

function toleranceIn({ adjuster }: MountedAdjuster, { pump }: BenchWork): number {
  return fromSi(toSi(pump.tolerance), adjuster.unit).value;
}
