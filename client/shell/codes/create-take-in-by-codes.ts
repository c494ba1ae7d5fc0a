/** Taking in by codes: this device shows what it has, and then reads the other one's answer. */
import { createSignal, onMount } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import type { CodeKind } from "#client/device/hand-off/codes/code-frame.ts";
import { type CodeSequence, createCodeSequence } from "#client/device/hand-off/codes/code-sequence.ts";
import { readBundle } from "#client/device/hand-off/read-bundle.ts";
import { createTakeIn } from "#client/shell/create-take-in.ts";
import { handOff } from "#client/text/hand-off.ts";
import { handOffProblems } from "#client/text/hand-off-problems.ts";

export function createTakeInByCodes(device: Device) {
  const takeIn = createTakeIn(device);
  const [step, setStep] = createSignal<"show" | "read">("show");
  const [sequence, setSequence] = createSignal<CodeSequence>();
  const [problem, setProblem] = createSignal<string>();
  const showHoldings = async (): Promise<void> => {
    takeIn.leave();
    setStep("show");
    const codes = await device.codes().catch(() => undefined);
    if (codes === undefined) return void setProblem(handOff.codesNotLoaded);
    const made = createCodeSequence("holdings", await codes.holdings());
    setProblem(made.ok ? undefined : handOffProblems.tooMuchForCodes);
    setSequence(made.ok ? made.sequence : undefined);
  };
  const take = async (kind: CodeKind, content: Uint8Array): Promise<void> => {
    await takeIn.take(kind === "file" ? readBundle(content) : await (await device.codes()).readAnswer(content));
  };
  onMount(() => void showHoldings());
  return { takeIn, step, sequence, problem, showHoldings, readAnswer: () => void setStep("read"), take };
}
