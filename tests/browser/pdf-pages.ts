/** What a PDF says of itself: the sizes of its pages, their texts, and whether it is tagged for who cannot see it. */
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

export interface PdfPages {
  /** Width and height of each page's media box, in points. */
  readonly sizes: readonly (readonly [number, number])[];
  readonly texts: readonly string[];
  readonly isTagged: boolean;
}

export async function readPdf(bytes: Uint8Array): Promise<PdfPages> {
  const loading = getDocument({ data: new Uint8Array(bytes), useSystemFonts: true, verbosity: 0 });
  const pdf = await loading.promise;
  const sizes: [number, number][] = [];
  const texts: string[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    sizes.push([right - left, top - bottom]);
    const { items } = await page.getTextContent();
    texts.push(
      items
        .map((item) => ("str" in item ? item.str : ""))
        .join(" ")
        .replace(/\s+/g, " "),
    );
  }
  const isTagged = (await pdf.getMarkInfo())?.Marked === true;
  await loading.destroy();
  return { sizes, texts, isTagged };
}
