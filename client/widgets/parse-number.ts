/** Numbers as people type them in the pits. */

/**
 * The number in `text`, or undefined when it is none. Comma and point both separate decimals, the true minus sign counts
 * as one, and nothing else may stand beside the digits ("62psi" is no number).
 */
export function parseNumber(text: string): number | undefined {
  const plain = text.trim().replace("−", "-").replace(",", ".");
  if (!/^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(plain)) return undefined;
  return Number(plain);
}
