/** What a device needs to put the program on its home screen. */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { drawIcon, iconPath, icons } from "./draw-icons.ts";
import type { Person } from "./person.ts";
import { screens as devices, openPits, type Pits } from "./pits.ts";

let pits: Pits;
let rider: Person;

beforeAll(async () => {
  pits = await openPits();
  rider = await pits.open("Rowan Alder", devices.phone);
});

afterAll(() => pits?.close());

interface Manifest {
  readonly name: string;
  readonly display: string;
  readonly start_url: string;
  readonly icons: readonly {
    readonly src: string;
    readonly sizes: string;
    readonly type: string;
    readonly purpose: string;
  }[];
}

/** The side of a picture of the server, as the browser decodes it. */
function sideOf(page: Page, src: string): Promise<string> {
  return page.evaluate(async (address) => {
    const image = new Image();
    image.src = address;
    await image.decode();
    return `${image.naturalWidth}x${image.naturalHeight}`;
  }, src);
}

test("the manifest names icons of 192 and 512 px and one that may be masked, and each is as large as it says", async () => {
  const { page } = rider;
  const address = await page.locator('link[rel="manifest"]').getAttribute("href");
  const manifest = (await (await page.request.get(`${rider.network.origin}${address}`)).json()) as Manifest;
  expect(manifest).toMatchObject({ name: "Pitslate", display: "standalone", start_url: "/" });
  const pictures = manifest.icons.filter(({ type }) => type === "image/png");
  expect(pictures.map(({ sizes, purpose }) => `${sizes} ${purpose}`).sort()).toEqual([
    "192x192 any",
    "512x512 any",
    "512x512 maskable",
  ]);
  for (const { src, sizes } of pictures) expect(await sideOf(page, src), src).toBe(sizes);
});

test("a home screen that reads no manifest finds its icon", async () => {
  const { page } = rider;
  const address = await page.locator('link[rel="apple-touch-icon"]').getAttribute("href");
  expect(await sideOf(page, address ?? "")).toBe("180x180");
});

test.each(icons)("$file is drawn from the icon", async (icon) => {
  const { page } = rider;
  const browser = page.context().browser();
  if (!browser) throw new Error("The page has no browser.");
  const drawn = await drawIcon(browser, icon);
  const farthest = await page.evaluate(
    async (pictures) => {
      const [a, b] = await Promise.all(
        pictures.map(async (picture) => {
          const image = new Image();
          image.src = `data:image/png;base64,${picture}`;
          await image.decode();
          const canvas = new OffscreenCanvas(image.width, image.height).getContext("2d");
          canvas?.drawImage(image, 0, 0);
          return canvas?.getImageData(0, 0, image.width, image.height).data ?? new Uint8ClampedArray();
        }),
      );
      if (!a || !b || a.length !== b.length) return Number.POSITIVE_INFINITY;
      return a.reduce((sum, value, index) => sum + Math.abs(value - (b[index] ?? 0)), 0) / a.length;
    },
    [drawn.toString("base64"), readFileSync(iconPath(icon)).toString("base64")],
  );
  // Browsers smooth edges a little differently; another drawing differs by tens.
  expect(farthest).toBeLessThan(2);
});
