/** The day by the device's clock. */

/** An ISO date such as 2026-05-30. It only chooses which weekend a screen opens on. */
export function today(): string {
  return new Date().toISOString().slice(0, 10);
}
