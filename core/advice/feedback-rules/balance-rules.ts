/**
 * Front and rear against each other, judged by the rider's own baseline: no
 * ratio is right for everybody. A shift alone is no complaint; with one, it
 * says which end to change.
 */
import type { FeedbackRule } from "../feedback-rule.ts";

export const balanceRules: readonly FeedbackRule[] = [
  {
    id: "front-firmer-pushes-wide",
    stage: "balance",
    ends: ["front"],
    when: { all: ["firmer than the other end", "pushes wide"], none: ["rim strikes"] },
    moves: [
      { at: "suspension", adjuster: "main-pressure", direction: "lower", size: "balance as before" },
      { at: "suspension", end: "other", adjuster: "main-pressure", direction: "raise", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The front pushes wide and has become firmer against the rear than in the rider's baseline.",
    notice: "The front turns in as it used to.",
    otherwise: "Go back to the baseline at both ends and start again from there.",
    provenance: "physics",
  },
  {
    id: "front-softer-dives",
    stage: "balance",
    ends: ["front"],
    when: {
      all: ["softer than the other end", "middle dives"],
      none: ["sag above target", "all travel used too easily", "dives under braking"],
    },
    moves: [
      { at: "suspension", adjuster: "main-pressure", direction: "raise", size: "balance as before" },
      { at: "suspension", end: "other", adjuster: "main-pressure", direction: "lower", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The front dives and has become softer against the rear than in the rider's baseline.",
    notice: "The bike is level again on steep parts.",
    otherwise: "Go back to the baseline at both ends and start again from there.",
    provenance: "physics",
  },
  {
    id: "rear-firmer-steps-out",
    stage: "balance",
    ends: ["rear"],
    when: { all: ["firmer than the other end", "steps out"], none: ["rim strikes"] },
    moves: [
      { at: "suspension", adjuster: "main-pressure", direction: "lower", size: "balance as before" },
      { at: "suspension", end: "other", adjuster: "main-pressure", direction: "raise", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The rear steps out and has become firmer against the front than in the rider's baseline.",
    notice: "The rear follows as it used to.",
    otherwise: "Go back to the baseline at both ends and start again from there.",
    provenance: "physics",
  },
  {
    id: "unsure-and-softer",
    stage: "balance",
    ends: ["front", "rear"],
    when: { all: ["confidence low", "softer than the other end"], none: ["middle dives", "sag above target"] },
    moves: [
      { at: "suspension", adjuster: "main-pressure", direction: "raise", size: "balance as before" },
      { at: "suspension", adjuster: "low-speed-compression", direction: "close", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The rider is unsure, and this end has become softer against the other than in the rider's baseline.",
    notice: "The bike feels level and known again.",
    otherwise: "Go back to the baseline at both ends and start again from there.",
    provenance: "physics",
  },
  {
    id: "unsure-and-firmer",
    stage: "balance",
    ends: ["front", "rear"],
    when: {
      all: ["confidence low", "firmer than the other end"],
      none: ["pushes wide", "steps out", "sag below target"],
    },
    moves: [
      { at: "suspension", adjuster: "main-pressure", direction: "lower", size: "balance as before" },
      { at: "suspension", adjuster: "low-speed-compression", direction: "open", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The rider is unsure, and this end has become firmer against the other than in the rider's baseline.",
    notice: "The bike feels level and known again.",
    otherwise: "Go back to the baseline at both ends and start again from there.",
    provenance: "physics",
  },
];
