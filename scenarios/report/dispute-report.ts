import { nameOfPath } from "#core/advice/adjuster-names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { disputes } from "#core/weekend/disputes.ts";
import { parseSettingKey } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { Naming } from "./naming.ts";

export interface ReportedDisputes {
  readonly open: readonly ReportedDispute[];
  readonly resolved: readonly ResolvedDispute[];
}

export interface ReportedDispute {
  /** Rider and adjuster for a setting; kind and key for anything else. */
  readonly about: string;
  readonly claims: readonly ReportedClaim[];
}

export interface ReportedClaim {
  readonly value: TypedQuantity | undefined;
  readonly by: string;
  readonly device: string;
  readonly at: string;
}

export interface ResolvedDispute extends ReportedDispute {
  readonly found: TypedQuantity | undefined;
  readonly resolvedBy: string;
  readonly resolvedAt: string;
}

/** Open disputes of any kind, and disputes over settings that somebody resolved at the bike. */
export function reportDisputes(ledger: Ledger, naming: Naming): ReportedDisputes {
  const open = disputes(ledger).map(({ kind, key, claims }) => ({
    about: subjectInWords(kind, key, naming),
    claims: claims.map((claim) => claimOf(claim, naming)),
  }));
  const resolved = ledger.keys(settingKind).flatMap((key) =>
    ledger.history(settingKind, key).flatMap((record): ResolvedDispute[] => {
      if (record.cause?.type !== "resolution") return [];
      const claims = record.cause.records.flatMap((id) => ledger.record(id) ?? []);
      return [
        {
          about: subjectInWords(settingKind.kind, key, naming),
          claims: claims.map((claim) => claimOf(claim, naming)),
          found: record.value?.quantity,
          resolvedBy: naming.member(record.by),
          resolvedAt: record.at,
        },
      ];
    }),
  );
  return { open, resolved: resolved.sort((a, b) => (a.resolvedAt < b.resolvedAt ? -1 : 1)) };
}

function subjectInWords(kind: string, key: string, naming: Naming): string {
  const address = kind === settingKind.kind ? parseSettingKey(key) : undefined;
  return address ? `${naming.rider(address.riderId)}, ${nameOfPath(address.path)}` : `${kind} ${key}`;
}

function claimOf(claim: LedgerRecord, naming: Naming): ReportedClaim {
  const isSetting = claim.subject.startsWith(`${settingKind.kind}:`);
  return {
    value: isSetting ? (claim.value as Setting | undefined)?.quantity : undefined,
    by: naming.member(claim.by),
    device: claim.device,
    at: claim.at,
  };
}
