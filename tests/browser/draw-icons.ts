/** Draws the icons for installing from `client/public/icon.svg`: `npm run icons` writes them beside it. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser } from "playwright-core";
import { launchChromium } from "#scenarios/printing/chromium.ts";

const folder = fileURLToPath(new URL("../../client/public/", import.meta.url));

export interface Icon {
  readonly file: string;
  readonly sizePx: number;
  /** How much of the side the drawing takes. A maskable icon may lose all outside a circle of 0.8 of it (W3C manifest, 1.3). */
  readonly share: number;
}

export const icons: readonly Icon[] = [
  { file: "icon-192.png", sizePx: 192, share: 1 },
  { file: "icon-512.png", sizePx: 512, share: 1 },
  { file: "icon-maskable-512.png", sizePx: 512, share: 0.9 },
  { file: "apple-touch-icon.png", sizePx: 180, share: 1 },
];

export const iconPath = (icon: Icon): string => join(folder, icon.file);

/** The PNG of an icon: black to the edges, since systems cut their own corners. */
export async function drawIcon(browser: Browser, { sizePx, share }: Icon): Promise<Buffer> {
  const page = await browser.newPage({ viewport: { width: sizePx, height: sizePx } });
  try {
    const drawing = readFileSync(join(folder, "icon.svg")).toString("base64");
    await page.setContent(
      `<body style="margin:0;background:#000;display:grid;place-items:center;height:100vh">
        <img alt="" width="${sizePx * share}" src="data:image/svg+xml;base64,${drawing}"></body>`,
    );
    await page.locator("img").evaluate((image: HTMLImageElement) => image.decode());
    return await page.screenshot({ type: "png" });
  } finally {
    await page.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const browser = await launchChromium();
  for (const icon of icons) writeFileSync(iconPath(icon), await drawIcon(browser, icon));
  await browser.close();
}
