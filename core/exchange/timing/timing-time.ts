/** Times as timing systems write them. */

const LONGEST_SECONDS = 3600;
const FRACTION = '(?:[.,"″](\\d{1,3})["″]?)?';
const withMinutes = new RegExp(`^(?:0{1,2}:)?(\\d{1,2})[:'′](\\d{2})${FRACTION}$`);
const secondsOnly = new RegExp(`^(\\d{1,4})${FRACTION}\\s?s?$`);

/** Seconds in a cell, to the thousandth; undefined when it is no time of a run (DNF, an empty cell, over an hour). */
export function parseTimingTime(text: string): number | undefined {
  const plain = text.trim();
  const long = withMinutes.exec(plain);
  if (long) {
    const [, minutes, seconds, fraction = "0"] = long;
    return Number(seconds) < 60 ? inRange(Number(minutes) * 60 + Number(`${seconds}.${fraction}`)) : undefined;
  }
  const short = secondsOnly.exec(plain);
  return short ? inRange(Number(`${short[1]}.${short[2] ?? 0}`)) : undefined;
}

function inRange(seconds: number): number | undefined {
  const rounded = Math.round(seconds * 1000) / 1000;
  return rounded > 0 && rounded <= LONGEST_SECONDS ? rounded : undefined;
}
