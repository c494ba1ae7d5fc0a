/** A line over the ground as a receiver has recorded it. */

/** Degrees on the WGS 84 ellipsoid, latitude −90 to 90, longitude −180 to 180; height above sea level, m, where it was recorded. */
export interface TrackPoint {
  readonly latitude: number;
  readonly longitude: number;
  readonly height: number | undefined;
}

/** Pieces of one track: between two of them the receiver had lost its signal, or was off. */
export type TrackSegments = readonly (readonly TrackPoint[])[];
