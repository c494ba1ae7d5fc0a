/**
 * Branded SI quantities. Inside the project every number with a unit is one of
 * these types, so that a gauge pressure cannot stand where an absolute one is
 * meant, nor newtons where metres are. The brand exists for the compiler only.
 */
declare const dimension: unique symbol;
type Branded<Name extends string> = number & { readonly [dimension]: Name };

/** Absolute pressure, Pa, measured from vacuum. */
export type AbsolutePressure = Branded<"absolute pressure">;
/** Gauge pressure, Pa, measured from the ambient pressure. */
export type GaugePressure = Branded<"gauge pressure">;
/** Thermodynamic temperature, K. */
export type Temperature = Branded<"temperature">;
/** Length, m. */
export type Length = Branded<"length">;
/** Area, m². */
export type Area = Branded<"area">;
/** Volume, m³. */
export type Volume = Branded<"volume">;
/** Mass, kg. */
export type Mass = Branded<"mass">;
/** Force, N; positive in compression. */
export type Force = Branded<"force">;
/** Spring rate, N/m. */
export type SpringRate = Branded<"spring rate">;
/** Energy, J. */
export type Energy = Branded<"energy">;
/** Frequency, Hz. */
export type Frequency = Branded<"frequency">;
/** Plane angle, rad. */
export type Angle = Branded<"angle">;
/** Viscous damping coefficient, N·s/m. */
export type DampingCoefficient = Branded<"damping coefficient">;

/*
 * Constructors: each takes a number that is already in the SI unit of its
 * type. They only brand; a value from outside passes a schema first.
 */

/** Brands pascals measured from vacuum. */
export const absolutePascals = (pascals: number): AbsolutePressure => pascals as AbsolutePressure;
/** Brands pascals measured from ambient. */
export const gaugePascals = (pascals: number): GaugePressure => pascals as GaugePressure;
/** Brands kelvins. */
export const kelvins = (value: number): Temperature => value as Temperature;
/** Brands metres. */
export const metres = (value: number): Length => value as Length;
/** Brands square metres. */
export const squareMetres = (value: number): Area => value as Area;
/** Brands cubic metres. */
export const cubicMetres = (value: number): Volume => value as Volume;
/** Brands kilograms. */
export const kilograms = (value: number): Mass => value as Mass;
/** Brands newtons. */
export const newtons = (value: number): Force => value as Force;
/** Brands newtons per metre. */
export const newtonsPerMetre = (value: number): SpringRate => value as SpringRate;
/** Brands joules. */
export const joules = (value: number): Energy => value as Energy;
/** Brands hertz. */
export const hertz = (value: number): Frequency => value as Frequency;
/** Brands radians. */
export const radians = (value: number): Angle => value as Angle;
/** Brands newton-seconds per metre. */
export const newtonSecondsPerMetre = (value: number): DampingCoefficient => value as DampingCoefficient;
