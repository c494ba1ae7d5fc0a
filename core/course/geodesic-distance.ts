/**
 * How far two points of the ground are apart.
 *
 * The shortest line on the WGS 84 ellipsoid (a = 6378137 m, f = 1/298.257223563), by the method of C. F. F. Karney,
 * "Algorithms for geodesics", Journal of Geodesy 87 (2013) 43–55, as his own library computes it: good to some
 * nanometres, for antipodes too. On a sphere the same distance would be up to 0.6 % off.
 *
 * It is a horizontal distance, at sea level. A course 2000 m high is 0.03 % longer for that, which is left out.
 */
import geodesic from "geographiclib-geodesic";
import type { TrackPoint } from "./track.ts";

type Place = Pick<TrackPoint, "latitude" | "longitude">;

/** Metres from one point to the other; 0 for the same point. Latitudes −90 to 90, longitudes −180 to 180. */
export function geodesicDistance(from: Place, to: Place): number {
  const { DISTANCE, WGS84 } = geodesic.Geodesic;
  const { s12 } = WGS84.Inverse(from.latitude, from.longitude, to.latitude, to.longitude, DISTANCE);
  if (s12 === undefined || Number.isNaN(s12)) throw new Error("A latitude or longitude is outside its range.");
  return s12;
}
