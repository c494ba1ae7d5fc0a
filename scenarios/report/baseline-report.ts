import type { Ledger } from "#core/ledger/ledger.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import { baselineKind } from "#core/team/record-kinds.ts";
import type { Naming } from "./naming.ts";

/** One version of a baseline. */
export interface ReportedBaseline {
  readonly at: string;
  readonly by: string;
  readonly approved: boolean;
  readonly current: boolean;
  readonly values: SetupValues;
}

/** All versions of a rider's baselines, oldest first. */
export function reportBaselines(
  ledger: Ledger,
  naming: Naming,
  riderId: string,
): Readonly<Record<CourseType, readonly ReportedBaseline[]>> {
  const versions = (type: CourseType): readonly ReportedBaseline[] => {
    const key = `${riderId}/${type}`;
    const heads = new Set(ledger.heads(baselineKind, key).map(({ id }) => id));
    return ledger.history(baselineKind, key).map(({ id, at, by, cause, value }) => ({
      at,
      by: naming.member(by),
      approved: cause?.type === "approval",
      current: heads.has(id),
      values: value?.values ?? {},
    }));
  };
  const [steep, jumpy, wet] = courseTypes.map(versions);
  return { steep: steep ?? [], jumpy: jumpy ?? [], wet: wet ?? [] };
}
