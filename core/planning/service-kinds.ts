/** The kinds of record of service. `core/service` works on plain data and knows no records. */
import { defineKind } from "#core/ledger/kind.ts";
import { servicePlanSchema } from "#core/service/service-plan.ts";
import { serviceSchema } from "#core/service/service-record.ts";

/** Key: rider/service. Merged whole: it is one thing that was done. */
export const serviceKind = defineKind({ kind: "service", scope: "rider", schema: serviceSchema, merge: "whole" });
/** Key: "team". */
export const servicePlanKind = defineKind({
  kind: "service-plan",
  scope: "team",
  schema: servicePlanSchema,
  merge: "fields",
});

export const serviceKinds = [serviceKind, servicePlanKind] as const;
