/** Where a member's workplace is. */
import type { Member } from "#core/team/people.ts";

/** The path of the workplace for a member's role. */
export function workplacePath(member: Member): string {
  switch (member.role) {
    case "mechanic":
      return "/pit";
    case "rider":
      return "/trackside";
    case "manager":
      return "/review";
  }
}
