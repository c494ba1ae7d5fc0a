/** The list of all kinds there are. */
import { teamKinds } from "#core/team/record-kinds.ts";
import { weekendKinds } from "#core/weekend/record-kinds.ts";
import { serviceKinds } from "./service-kinds.ts";

/** Every kind of record that this version can read. */
export const allKinds = [...teamKinds, ...weekendKinds, ...serviceKinds] as const;
