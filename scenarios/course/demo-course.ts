/** The course of the demo weekend, as `scenarios/kestrel-ridge.gpx` has it. */
export const demoCourse = { name: "Kestrel Ridge", seed: 20260612 } as const;
