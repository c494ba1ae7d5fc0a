import type { GuardProblem } from "./guard.ts";
import { type Logger, reasonOf } from "./logging.ts";
import type { UpdateStore } from "./store/update-store.ts";

/** What one run of the server keeps of refused updates at most, so that a hostile peer cannot fill the disk. */
export const quarantineLimit = { updates: 1000, bytes: 64 * 1024 * 1024 } as const;

export type Quarantine = {
  /** Keeps a refused update while there is room for it. Never throws. */
  keep(document: string, update: Uint8Array, problem: GuardProblem): void;
  /** How many updates were refused, kept or not. */
  readonly refused: number;
};

export function createQuarantine(
  store: UpdateStore,
  logger: Logger,
  limit: { readonly updates: number; readonly bytes: number } = quarantineLimit,
): Quarantine {
  let refused = 0;
  let kept = 0;
  let bytes = 0;
  return {
    get refused() {
      return refused;
    },
    keep(document, update, problem) {
      refused += 1;
      const hasRoom = kept < limit.updates && bytes + update.length <= limit.bytes;
      logger.warn("update refused", { document, type: problem.type, bytes: update.length, kept: hasRoom });
      if (!hasRoom) return;
      kept += 1;
      bytes += update.length;
      try {
        store.quarantine(document, update, `${problem.type}: ${problem.sentence}`);
      } catch (error) {
        logger.error("refused update could not be kept", { document, reason: reasonOf(error) });
      }
    },
  };
}
