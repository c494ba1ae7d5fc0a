/**
 * A real Chromium for printing and for the browser tests: the one that a registry package
 * carries, or, where that does not run, one that is installed on the machine.
 */
import { existsSync } from "node:fs";
import sparticuz from "@sparticuz/chromium";
import { type Browser, chromium } from "playwright-core";

const installed = [
  process.env.PITSLATE_CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/**
 * No traffic of the browser's own: nothing but the page that is opened speaks to anybody. The package's own list of options
 * is for one page in one process, and ends the browser when one of several devices closes.
 */
const quiet = [
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-quic",
  "--no-first-run",
  "--no-sandbox",
];

/**
 * Starts a browser; the caller closes it.
 * @param film a file of raw video (YUV4MPEG2) that every camera in it shows, over and over; without one there is no camera
 */
export async function launchChromium(film?: string): Promise<Browser> {
  const camera = film === undefined ? [] : cameraWith(film);
  const failures: string[] = [];
  for (const candidate of await chromiumCandidates()) {
    try {
      return await chromium.launch({ ...candidate, args: [...candidate.args, ...camera], headless: true });
    } catch (error) {
      failures.push(`${candidate.executablePath}: ${String(error).split("\n")[0]}`);
    }
  }
  throw new Error(`No Chromium starts here. Tried:\n${failures.join("\n")}`);
}

function cameraWith(film: string): readonly string[] {
  return [
    "--use-fake-device-for-media-stream",
    "--use-fake-ui-for-media-stream",
    `--use-file-for-fake-video-capture=${film}`,
  ];
}

/** Programs that may be a Chromium that runs here, the best first, with the options for a test. */
export async function chromiumCandidates(): Promise<
  readonly { readonly executablePath: string; readonly args: string[] }[]
> {
  const packaged =
    process.platform === "linux" && process.arch === "x64"
      ? [{ executablePath: await sparticuz.executablePath(), args: quiet }]
      : [];
  const here = installed.flatMap((path) =>
    path !== undefined && existsSync(path) ? { executablePath: path, args: quiet } : [],
  );
  return [...packaged, ...here];
}
