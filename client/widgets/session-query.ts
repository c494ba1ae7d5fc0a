/** Weekend and session as the end of an address: `?weekend=…&session=…`; what is not known is left out. */
export function sessionQuery(weekendId: string | undefined, sessionId: string | undefined): string {
  const chosen = new URLSearchParams();
  if (weekendId !== undefined) chosen.set("weekend", weekendId);
  if (sessionId !== undefined) chosen.set("session", sessionId);
  return `?${chosen.toString()}`;
}
