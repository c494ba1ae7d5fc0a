/** Prints a page of the client in a Chromium without a window, from a server of its own on this machine. */
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { parseDocumentName } from "#core/ledger/documents.ts";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import { buildClient } from "#server/launch/build-client.mjs";
import { createLogger } from "#server/logging.ts";
import { startServer } from "#server/server.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";
import { launchChromium } from "./chromium.ts";
import type { PrintRequest } from "./print-request.ts";

/** How long the page may take to have all entries, ms: generous, since machines may be slow. */
const WAIT_MS = 60_000;

/** A page of the client that is open and has all its entries. */
export interface OpenPage {
  readonly page: Page;
  /** Closes the page, its browser and its server. */
  close(): Promise<void>;
}

/** The PDF of a page. Builds the client when its sources have changed; throws when no Chromium starts here. */
export async function printPage(request: PrintRequest): Promise<Uint8Array> {
  const { page, close } = await openPage(request);
  try {
    return await page.pdf({ preferCSSPageSize: true, tagged: true });
  } finally {
    await close();
  }
}

/** Opens the page of `request` as it is before it is printed. The caller closes it. */
export async function openPage(request: PrintRequest): Promise<OpenPage> {
  const root = fileURLToPath(new URL("../..", import.meta.url));
  buildClient(root);
  const store = createMemoryStore();
  store.append(request.documents.map(({ name, update }) => ({ document: name, update })));
  const server = await startServer({
    host: "127.0.0.1",
    port: 0,
    store,
    guard: (update, document, maximumBytes) => inspectUpdate(update, document, { maximumBytes }),
    isDocumentName: (name) => parseDocumentName(name) !== undefined,
    logger: createLogger("silent", () => {}),
    clientFolder: join(root, "client", "dist"),
  });
  let browser: Browser | undefined;
  const close = async (): Promise<void> => {
    await browser?.close();
    await server.close();
    store.close();
  };
  try {
    browser = await launchChromium();
    return { page: await visit(browser, `http://127.0.0.1:${server.port}`, request), close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function visit(browser: Browser, origin: string, { address, entries, member }: PrintRequest): Promise<Page> {
  // The program's own copy is for later visits, and there are none.
  const context = await browser.newContext({ serviceWorkers: "block" });
  await context.addInitScript(`localStorage.setItem("pitslate.member", ${JSON.stringify(member)})`);
  const page = await context.newPage();
  page.setDefaultTimeout(WAIT_MS);
  await page.goto(`${origin}${address}`);
  await page.locator(`article[data-entries="${entries}"]`).waitFor();
  return page;
}
