/** Pixels of four bytes (red, green, blue, alpha), row by row: what a canvas gives and takes. */
export interface Picture {
  readonly data: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}
