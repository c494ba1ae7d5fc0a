/** A made bundle as the browser passes it on. */
import { bundleEnding } from "#client/device/hand-off/bundle.ts";

/** `pitslate-2026-05-30-1405.pitslate` for a moment (ISO 8601), by the clock on the wall. */
export function handOffFileName(at: string): string {
  const moment = new Date(at);
  const twoDigits = (part: number): string => String(part).padStart(2, "0");
  const day = [moment.getFullYear(), moment.getMonth() + 1, moment.getDate()].map(twoDigits).join("-");
  return `pitslate-${day}-${twoDigits(moment.getHours())}${twoDigits(moment.getMinutes())}${bundleEnding}`;
}

export function handOffFile(bytes: Uint8Array, name: string): File {
  return new File([bytes as Uint8Array<ArrayBuffer>], name, { type: "application/octet-stream" });
}

/** Puts the file where the browser keeps downloads. */
export function download(file: File): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  document.body.append(link);
  link.click();
  link.remove();
  // Some browsers read the file only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Whether this browser can hand a file to another app or device. */
export function canShare(file: File): boolean {
  return typeof navigator.canShare === "function" && navigator.canShare({ files: [file] });
}
