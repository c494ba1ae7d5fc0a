/** German names of what one did oneself and can take back. */
import type { ownActs as english } from "../english/own-acts.ts";
import type { Said } from "../spoken.ts";

export const ownActs: Said<typeof english> = {
  run: (session) => `dein Lauf in ${session}`,
  course: "Strecke und Bedingungen",
  weekend: "das Wochenende und seine Sessions",
  rider: (name) => `Angaben zu ${name}`,
  noRun: (name) => `${name}: kein Lauf zu erwarten`,
};
