/** Milliseconds between pings, and from the last sign of life until a socket is ended. */
export type HeartbeatTimes = { readonly everyMs: number; readonly deadAfterMs: number };

/** Wi-Fi that goes away leaves sockets half open and silent; within five seconds that is noticed. */
export const defaultHeartbeat: HeartbeatTimes = { everyMs: 2000, deadAfterMs: 5000 };

export type Pulse = { ping(): void; terminate(): void };

/** Pings every socket that it watches and ends those that stay silent. */
export type Heartbeat = {
  /** @returns what to call with each sign of life. */
  watch(pulse: Pulse): () => void;
  forget(pulse: Pulse): void;
  stop(): void;
};

/** Looks are taken more often than pings are sent, so that a dead socket does not live until the next ping. */
const looksPerPing = 4;

/** @param now milliseconds of a clock that never goes back. */
export function startHeartbeat({ everyMs, deadAfterMs }: HeartbeatTimes, now: () => number): Heartbeat {
  const heardAt = new Map<Pulse, number>();
  const lookMs = everyMs / looksPerPing;
  let looks = 0;
  const timer = setInterval(() => {
    looks += 1;
    const silentSince = now() - deadAfterMs + lookMs;
    for (const [pulse, heard] of heardAt) {
      if (heard <= silentSince) pulse.terminate();
      else if (looks % looksPerPing === 0) pulse.ping();
    }
  }, lookMs);
  return {
    watch(pulse) {
      heardAt.set(pulse, now());
      return () => {
        if (heardAt.has(pulse)) heardAt.set(pulse, now());
      };
    },
    forget(pulse) {
      heardAt.delete(pulse);
    },
    stop() {
      clearInterval(timer);
    },
  };
}
