/** Italian names of what one did oneself and can take back. */
import type { ownActs as english } from "../english/own-acts.ts";
import type { Said } from "../spoken.ts";

export const ownActs: Said<typeof english> = {
  run: (session) => `la tua run (${session})`,
  course: "pista e condizioni",
  weekend: "il weekend e le sue sessioni",
  rider: (name) => `i dati di ${name}`,
  noRun: (name) => `${name}: nessuna run da aspettare`,
};
