import { describe, expect, it } from "vitest";
import { describeRun } from "#client/trackside/describe-run.ts";
import { asked, emptyDraft, parseDraft, restGood, runOf, withFeedback } from "#client/trackside/run-draft.ts";

const occasion = { bike: "alder-1", weekend: "kestrel", session: "p1", setup: ["01"] };

describe("the draft of a run", () => {
  it("says nothing of what was not said", () => {
    expect(runOf(emptyDraft, occasion)).toEqual({ ok: true, run: { ...occasion, front: {}, rear: {} } });
  });

  it("takes back an answer without a trace", () => {
    const said = withFeedback(emptyDraft, "front", { middle: "dives", bottomOuts: 2 });
    const back = withFeedback(said, "front", { middle: undefined });
    expect(back.front).toEqual({ bottomOuts: 2 });
  });

  it("says good of the rest and keeps what was said", () => {
    const said = withFeedback(emptyDraft, "rear", { returnSpeed: "too fast" });
    expect(restGood(said, "rear", asked)).toEqual({
      ...emptyDraft,
      rear: { start: "good", middle: "good", end: "good", returnSpeed: "too fast", grip: "good" },
    });
  });

  it("says good only of what an end without suspension has", () => {
    expect(restGood(emptyDraft, "rear", ["grip"]).rear).toEqual({ grip: "good" });
  });

  it("becomes a run with units, seconds and a trimmed note", () => {
    const draft = { ...withFeedback(emptyDraft, "front", { sag: 41 }), time: "3:51.4", note: " Dives. " };
    expect(runOf({ ...draft, confidence: "low" }, occasion)).toEqual({
      ok: true,
      run: {
        ...occasion,
        timeSeconds: 231.4,
        front: { sag: { value: 41, unit: "mm" } },
        rear: {},
        confidence: "low",
        note: "Dives.",
      },
    });
  });

  it("is refused with a sentence that names what was typed as time", () => {
    const result = runOf({ ...emptyDraft, time: "fast" }, occasion);
    expect(result.ok ? "" : result.sentence).toContain('"fast"');
  });

  it("survives being stored, and nothing else passes for one", () => {
    const draft = { ...withFeedback(emptyDraft, "front", { grip: "slides" }), time: "3:4", note: "" };
    expect(parseDraft(JSON.stringify(draft))).toEqual(draft);
    for (const text of [null, "", "{", "null", "7", "{}", '{"front":{}}']) expect(parseDraft(text)).toBe(emptyDraft);
  });
});

describe("a run in words", () => {
  it("tells each end that something was said of, in the order of the stroke", () => {
    const draft = withFeedback(emptyDraft, "front", { grip: "slides", middle: "dives", bottomOuts: 1, sag: 41 });
    const made = runOf({ ...draft, time: "3:51", confidence: "fair" }, occasion);
    expect(made.ok && describeRun(made.run)).toEqual([
      "Front: middle dives, grip slides, bottomed out once, sag 41 mm.",
      "Confidence fair. Time 3:51.",
    ]);
  });

  it("is short when all was good, and empty when nothing was said", () => {
    const made = runOf(restGood(emptyDraft, "rear", asked), occasion);
    expect(made.ok && describeRun(made.run)).toEqual(["Rear: everything good."]);
    const dives = restGood(withFeedback(emptyDraft, "front", { middle: "dives", sag: 41 }), "front", asked);
    const answered = runOf(dives, occasion);
    expect(answered.ok && describeRun(answered.run)).toEqual(["Front: middle dives, the rest good, sag 41 mm."]);
    const silent = runOf(emptyDraft, occasion);
    expect(silent.ok && describeRun(silent.run)).toEqual([]);
  });
});
