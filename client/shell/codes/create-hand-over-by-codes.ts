/** Handing over by codes: this device reads what the other one has, and shows its answer. */
import { createSignal } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import type { CodeKind } from "#client/device/hand-off/codes/code-frame.ts";
import { type CodeSequence, createCodeSequence } from "#client/device/hand-off/codes/code-sequence.ts";
import { bundleProblemText } from "#client/shell/hand-off-problem-text.ts";
import { handOff } from "#client/text/hand-off.ts";
import { handOffCodes } from "#client/text/hand-off-codes.ts";
import { handOffProblems } from "#client/text/hand-off-problems.ts";

export type HandOverState =
  | { readonly state: "reading" /** Why the last attempt came to nothing. */; readonly sentence?: string }
  | { readonly state: "busy" }
  | { readonly state: "showing"; readonly sequence: CodeSequence /** What it brings. */; readonly sentence: string };

export function createHandOverByCodes(device: Device) {
  const [state, setState] = createSignal<HandOverState>({ state: "reading" });
  const refuse = (sentence: string): void => void setState({ state: "reading", sentence });
  const show = (kind: CodeKind, content: Uint8Array, sentence: string): void => {
    const made = createCodeSequence(kind, content);
    if (made.ok) setState({ state: "showing", sequence: made.sequence, sentence });
    else refuse(handOffProblems.tooMuchForCodes);
  };
  const answer = async (holdings: Uint8Array): Promise<void> => {
    setState({ state: "busy" });
    const codes = await device.codes().catch(() => undefined);
    if (codes === undefined) return refuse(handOff.codesNotLoaded);
    const made = await codes.answer(holdings, device.member()?.name);
    if (made.ok) show("answer", made.content, handOffCodes.send.answer(made.entries));
    else refuse(handOffProblems.answers[made.problem.type]);
  };
  const showEverything = async (): Promise<void> => {
    setState({ state: "busy" });
    // Codes hold little: older seasons go by file.
    const made = await device.exportBundle("open");
    if (made.ok) show("file", made.bytes, handOffCodes.send.everythingShown);
    else refuse(bundleProblemText(made.problem));
  };
  return { state, answer, showEverything, again: () => void setState({ state: "reading" }) };
}
