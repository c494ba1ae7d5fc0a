/** A run's time as riders read it. */

/** "3:45", "3:45.2". */
export function formatRunTime(totalSeconds: number): string {
  const thousandths = Math.round(totalSeconds * 1000);
  const minutes = Math.floor(thousandths / 60_000);
  const [whole, fraction] = String((thousandths % 60_000) / 1000).split(".");
  return `${minutes}:${(whole ?? "0").padStart(2, "0")}${fraction === undefined ? "" : `.${fraction}`}`;
}
