/** What a profile needs of a track; apart from its making, so that texts can name them without loading that. */

/** Length of course over which the heights are smoothed, m. */
export const SMOOTHED_OVER = 50;
/** Shortest track of which a profile says something, m: two lengths of smoothing. */
export const SHORTEST_TRACK = 100;
