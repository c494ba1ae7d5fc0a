/**
 * One connection of a device to the pit laptop, through the proxy. Each direction
 * is a queue: what is in it waits while the network is a black hole, as TCP keeps
 * it for sending again, and the end of a connection waits behind its bytes.
 */
import { Socket } from "node:net";
import type { Chance } from "#scenarios/player/chance.ts";
import type { NetworkMode } from "./network-mode.ts";

/** Ends the head of an HTTP message (RFC 9112, section 2.1). */
const END_OF_HEAD = "\r\n\r\n";

export interface NetworkLine {
  follow(mode: NetworkMode): void;
  /** Both sides see a reset. */
  reset(): void;
}

export interface NetworkLineContext {
  readonly device: Socket;
  readonly port: number;
  readonly chance: Chance;
  readonly mode: NetworkMode;
  /** Called once, when both sides have ended. */
  readonly onEnd: () => void;
}

/** Carries `device` to `port` on this machine, as `mode` has it. */
export function openNetworkLine(context: NetworkLineContext): NetworkLine {
  const { device, port, chance, onEnd } = context;
  const laptop = new Socket().setNoDelay(true);
  let mode = context.mode;
  let reached = false;
  let alive = 2;
  const flows = [openFlow(device, laptop), openFlow(laptop, device)];
  const follow = (next: NetworkMode): void => {
    mode = next;
    if (mode.kind === "half-open") return;
    if (!reached) {
      reached = true;
      laptop.connect(port, "127.0.0.1");
    }
    for (const flow of flows) flow.follow();
  };
  follow(mode);
  return { follow, reset };

  function reset(): void {
    for (const socket of [device, laptop]) {
      if (socket.connecting || socket.readyState === "closed") socket.destroy();
      else socket.resetAndDestroy();
    }
  }

  function openFlow(from: Socket, to: Socket): { readonly follow: () => void } {
    const queue: { readonly chunk: Buffer | "end"; readonly due: number }[] = [];
    let timer: NodeJS.Timeout | undefined;
    let headPassed = false;
    /** Bytes until the line is closed. */
    let left: number | undefined;

    const arrive = (chunk: Buffer | "end"): void => {
      queue.push({ chunk, due: Date.now() + (mode.kind === "delay" ? chance.below(mode.longestMs + 1) : 0) });
      pump();
    };
    const pump = (): void => {
      clearTimeout(timer);
      while (mode.kind !== "half-open") {
        const [first] = queue;
        if (!first) return;
        const wait = first.due - Date.now();
        if (wait > 0) {
          timer = setTimeout(pump, wait);
          return;
        }
        queue.shift();
        if (first.chunk === "end") to.end();
        else pass(first.chunk);
      }
    };
    /** The head of a connection always passes whole, so that a truncated one ends in the middle of a frame. */
    const pass = (chunk: Buffer): void => {
      const head = headPassed ? 0 : chunk.indexOf(END_OF_HEAD) + END_OF_HEAD.length;
      headPassed ||= chunk.includes(END_OF_HEAD);
      const body = chunk.length - head;
      if (left === undefined || !headPassed || body < left) {
        if (left !== undefined && headPassed) left -= body;
        if (to.writable) to.write(chunk);
        return;
      }
      to.end(chunk.subarray(0, Math.min(head + left, chunk.length - 1)));
      from.destroy();
    };

    from.on("data", arrive);
    from.on("error", () => {});
    from.on("close", () => {
      arrive("end");
      alive -= 1;
      if (alive > 0) return;
      clearTimeout(timer);
      onEnd();
    });
    return {
      follow: () => {
        left = mode.kind === "truncate" ? 1 + chance.below(mode.mostBytes) : undefined;
        pump();
      },
    };
  }
}
