/**
 * One touch does one thing. A glove that trembles touches twice, and by then the
 * next step has moved under the finger: a second touch so soon after the first
 * is not meant.
 */
const REST_MS = 700;

/** A gate that lets a touch through, and none that comes within the rest after it; `moment` is the event's own time stamp, ms. */
export function makeOneTouch(): (moment: number) => boolean {
  let last = Number.NEGATIVE_INFINITY;
  return (moment) => {
    if (moment - last < REST_MS) return false;
    last = moment;
    return true;
  };
}
