/** French names of what one did oneself and can take back. */
import type { ownActs as english } from "../english/own-acts.ts";
import type { Said } from "../spoken.ts";

export const ownActs: Said<typeof english> = {
  run: (session) => `ton run (${session})`,
  course: "piste et conditions",
  weekend: "le week-end et ses séances",
  rider: (name) => `les données de ${name}`,
  noRun: (name) => `${name} : pas de run à attendre`,
};
