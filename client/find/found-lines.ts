/** What can be found, in the words in which people look for it. */
import { common } from "#client/text/common.ts";
import { find as words } from "#client/text/find.ts";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { memberName, riderName, sessionName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { Findable } from "#core/planning/findables.ts";
import type { Role } from "#core/team/people.ts";
import { ends } from "#core/team/place.ts";
import type { Change } from "#core/weekend/changelog.ts";
import type { Run } from "#core/weekend/run.ts";

export interface FoundLine {
  readonly key: string;
  readonly kind: string;
  readonly title: string;
  /** Who, when, why, and the note; empty where the title says all. */
  readonly details: string;
  /** Where it is shown to one of this role. */
  readonly path: string;
  /** ISO 8601, empty for what has no moment. */
  readonly at: string;
}

/** One line for `item`, for whoever has `role`. */
export function foundLine(ledger: Ledger, item: Findable, role: Role): FoundLine {
  const kind = words.kinds[item.type];
  switch (item.type) {
    case "rider": {
      const facts = [...(item.plate === undefined ? [] : [words.plate(item.plate)]), item.bike].join(", ");
      return {
        key: `rider ${item.riderId}`,
        kind,
        title: words.rider(item.name, facts),
        details: "",
        path: riderPath(role, item.riderId),
        at: "",
      };
    }
    case "weekend":
      return {
        key: `weekend ${item.weekendId}`,
        kind,
        title: words.weekend(item.weekend.name, item.venue),
        details: item.weekend.startsOn,
        path: weekendPath(role, item.weekendId),
        at: "",
      };
    case "change":
      return {
        key: `change ${item.change.id}`,
        kind,
        title: changeTitle(ledger, item.change),
        details: sentence([formatMoment(item.at), memberName(ledger, item.change.by), trade.cause(item.change)]),
        path: riderPath(role, item.riderId, item.change.weekend, "changelog"),
        at: item.at,
      };
    case "run":
      return {
        key: `run ${item.riderId}/${item.id}`,
        kind,
        title: words.run(riderName(ledger, item.riderId), sessionName(ledger, item.run)),
        details: sentence([formatMoment(item.at), saidOf(item.run), item.run.note ?? ""]),
        path: riderPath(role, item.riderId, item.run.weekend, "feedback"),
        at: item.at,
      };
    case "service":
      return {
        key: `service ${item.riderId}/${item.id}`,
        kind,
        title: words.service(
          riderName(ledger, item.riderId),
          common.places[item.service.place],
          words.works[item.service.what],
        ),
        details: sentence([formatMoment(item.at), item.service.note ?? ""]),
        path: riderPath(role, item.riderId, item.service.weekend),
        at: item.at,
      };
  }
}

function changeTitle(ledger: Ledger, { riderId, path, from, to }: Change): string {
  return words.change(
    riderName(ledger, riderId),
    trade.adjuster(path),
    from.map(formatQuantity).join(" / ") || pit.changelog.nothing,
    to ? formatQuantity(to) : pit.changelog.nothing,
  );
}

function saidOf(run: Run): string {
  return ends
    .flatMap((end) => {
      const { noticed = [], start, middle, end: last, returnSpeed, grip } = run[end];
      const felt = [start, middle, last, returnSpeed, grip].flatMap((each) => (each === undefined ? [] : [each]));
      return [...felt.map((each) => trade.feelings[each]), ...noticed.map((each) => trade.symptoms[each])];
    })
    .join(", ");
}

function riderPath(role: Role, riderId: string, weekend?: string, view?: string): string {
  // A rider has the records of his own bike only.
  if (role === "rider") return "/trackside";
  if (role === "manager") return `/review/rider/${encodeURIComponent(riderId)}`;
  const query = new URLSearchParams({ ...(weekend && { weekend }), ...(view && { view }) }).toString();
  return `/pit/rider/${encodeURIComponent(riderId)}${query === "" ? "" : `?${query}`}`;
}

function weekendPath(role: Role, weekend: string): string {
  const query = new URLSearchParams({ weekend });
  return role === "rider" ? `/trackside?${query}` : role === "manager" ? "/review" : `/pit?${query}`;
}

function sentence(parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join(". ");
}
