/** When a socket that says nothing is asked and given up, and when a lost one is opened again. Times are in ms. */

/** Silence after which the other end is asked for a sign of life. */
export const askAfterMs = 2000;

/** Silence after which a socket is given up: Wi-Fi that was left keeps its sockets open for minutes. */
export const deadAfterMs = 5000;

/** The first wait before coming back is drawn below the first, the next below twice that, and so on up to the longest. */
const firstWaitMs = 300;
export const longestWaitMs = 3000;

/**
 * The wait before the next try, with full jitter, so that a pit full of devices does not come back at once.
 * @param failures how often it has failed in a row, from 1
 * @param random from 0 to below 1
 */
export function waitBeforeRetry(failures: number, random: () => number): number {
  return random() * Math.min(firstWaitMs * 2 ** (failures - 1), longestWaitMs);
}
