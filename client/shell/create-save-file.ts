/** Saving all of this device to a file. */
import { createSignal } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import type { DocumentSummary } from "#client/device/hand-off/bundle.ts";
import { handOff } from "#client/text/hand-off.ts";
import { riderName } from "#client/widgets/names.ts";
import { parseDocumentName } from "#core/ledger/documents.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { canShare, download, handOffFile, handOffFileName } from "./hand-off-file.ts";
import { bundleProblemText } from "./hand-off-problem-text.ts";

export type SaveState =
  | { readonly state: "idle" }
  | { readonly state: "busy" }
  | { readonly state: "refused"; readonly sentence: string }
  | {
      readonly state: "made";
      readonly file: File;
      readonly sentence: string;
      readonly lines: readonly string[];
      readonly canShare: boolean;
    };

export function createSaveFile(device: Device) {
  const [state, setState] = createSignal<SaveState>({ state: "idle" });
  const [problem, setProblem] = createSignal<string>();
  const save = async (): Promise<void> => {
    setState({ state: "busy" });
    setProblem(undefined);
    const made = await device.exportBundle("all");
    if (!made.ok) {
      setState({ state: "refused", sentence: bundleProblemText(made.problem) });
      return;
    }
    const { documents, at } = made.header;
    const file = handOffFile(made.bytes, handOffFileName(at));
    const entries = documents.reduce((sum, { records }) => sum + records, 0);
    download(file);
    setState({
      state: "made",
      file,
      sentence: `${handOff.save.done(file.name, entries)}${made.isIncomplete ? ` ${handOff.save.incomplete}` : ""}`,
      lines: documentLines(device.ledger(), documents),
      canShare: canShare(file),
    });
  };
  const share = async (file: File): Promise<void> => {
    setProblem(undefined);
    try {
      await navigator.share({ files: [file] });
    } catch {
      setProblem(handOff.save.notShared);
    }
  };
  return { state, problem, save, share };
}

/** What a file holds, a line a document; documents without entries are left out. */
export function documentLines(ledger: Ledger, documents: readonly DocumentSummary[]): readonly string[] {
  return documents
    .filter(({ records }) => records > 0)
    .map(({ name, records }) => handOff.save.document(documentInWords(ledger, name), records))
    .sort((a, b) => a.localeCompare(b, "en"));
}

function documentInWords(ledger: Ledger, name: string): string {
  const scope = parseDocumentName(name);
  if (scope?.scope !== "rider") return handOff.save.team;
  return handOff.save.rider(riderName(ledger, scope.rider), scope.year);
}
