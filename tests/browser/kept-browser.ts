/**
 * A browser that keeps what its pages keep, in a folder, so that it can be killed
 * and started again: a process of its own, spoken to by its debugging port.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { type BrowserContext, chromium } from "playwright-core";
import { chromiumCandidates } from "#scenarios/printing/chromium.ts";

export interface KeptBrowser {
  /** Its pages share one storage, as tabs of one device do. */
  readonly context: BrowserContext;
  /** Ends it as a loss of power would, with no time for goodbyes; returns when it is gone. */
  kill(): Promise<void>;
}

/** Starts a browser on `folder`, which is made when it is missing; the caller kills it. */
export async function openKeptBrowser(folder: string): Promise<KeptBrowser> {
  const failures: string[] = [];
  for (const { executablePath, args } of await chromiumCandidates()) {
    const options = ["--headless", "--remote-debugging-port=0", `--user-data-dir=${folder}`, ...args, "about:blank"];
    // A group of its own: killing the browser has to end its helper processes in the same moment.
    const child = spawn(executablePath, options, { detached: true, stdio: ["ignore", "ignore", "pipe"] });
    try {
      const browser = await chromium.connectOverCDP(await debuggingAddress(child));
      const [context] = browser.contexts();
      if (!context) throw new Error("The browser has no context that it keeps.");
      return { context, kill: () => kill(child) };
    } catch (error) {
      await kill(child);
      failures.push(`${executablePath}: ${String(error).split("\n")[0]}`);
    }
  }
  throw new Error(`No Chromium starts here. Tried:\n${failures.join("\n")}`);
}

/** The address in the line that the browser prints when it listens. */
function debuggingAddress(browser: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    browser.stderr?.on("data", (chunk: Buffer) => {
      said += chunk.toString();
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address) resolve(address);
    });
    browser.once("error", reject);
    browser.once("exit", (code) => reject(new Error(`It ended with ${code} before it listened: ${said}`)));
  });
}

async function kill(browser: ChildProcess): Promise<void> {
  if (browser.pid === undefined || browser.exitCode !== null || browser.signalCode !== null) return;
  const gone = once(browser, "exit");
  if (process.platform === "win32") browser.kill("SIGKILL");
  else process.kill(-browser.pid, "SIGKILL");
  await gone;
}
