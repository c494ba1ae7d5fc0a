/** The values that a draft stands for, as their kinds have them. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { knownValue } from "#core/team/roster.ts";
import { venueKind } from "#core/weekend/record-kinds.ts";
import type { Venue } from "#core/weekend/venue.ts";
import type { SessionDraft, WeekendDraft } from "./weekend-draft.ts";

/** Every venue that is known, by name. */
export function knownVenues(ledger: Ledger): readonly { readonly id: string; readonly venue: Venue }[] {
  return ledger
    .keys(venueKind)
    .flatMap((id) => {
      const venue = knownValue(ledger, venueKind, id);
      return venue ? [{ id, venue }] : [];
    })
    .sort((a, b) => a.venue.name.localeCompare(b.venue.name, "en"));
}

/** The sessions that stay. */
export function keptSessions({ sessions }: WeekendDraft): readonly SessionDraft[] {
  return sessions.filter(({ removal }) => removal === undefined);
}

/** The weekend at `venue`; not judged yet, and so are the others. */
export function weekendValue({ name, startsOn }: WeekendDraft, venue: string) {
  return { name: name.trim(), venue, startsOn };
}

/** The venue that is entered new. */
export function venueValue({ venueName, venueAltitude }: WeekendDraft) {
  return {
    name: venueName.trim(),
    ...(venueAltitude !== undefined && { altitude: { value: venueAltitude, unit: "m" as const } }),
  };
}

/** One session. */
export function sessionValue({ name, purpose, day, time }: SessionDraft) {
  return { name: name.trim(), ...(purpose && { purpose }), startsAt: `${day}T${time}` };
}
