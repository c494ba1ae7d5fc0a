import { createEffect, createSignal, onCleanup, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { unitText } from "#client/text/quantity-text.ts";
import { roundToStep } from "#core/quantity/rounding.ts";
import { isUnit } from "#core/quantity/unit.ts";
import { formatNumber } from "./format.ts";
import { makeHoldRepeat } from "./hold-repeat.ts";
import { parseNumber } from "./parse-number.ts";

export interface StepperProps {
  /** What is entered, for the label and for screen readers. */
  readonly label: string;
  /** A unit of the trade, or a word of its own for what is counted here. */
  readonly unit: string;
  readonly value: number | undefined;
  /** What a step goes by. */
  readonly step: number;
  /** Where a first step starts when there is no value yet. */
  readonly start?: number;
  readonly minimum: number;
  readonly maximum: number;
  /** A number, or undefined when the field was emptied. What was typed wrongly is said and not passed on. */
  readonly onChange: (value: number | undefined) => void;
}

/** A number with its unit: by steps with - and + (hold to repeat), or typed. A scroll or the wheel never changes it. */
export function Stepper(props: StepperProps) {
  const [text, setText] = createSignal("");
  const [problem, setProblem] = createSignal<string>();
  createEffect(() => {
    setText(props.value === undefined ? "" : formatNumber(props.value));
    setProblem(undefined);
  });
  const unit = () => (isUnit(props.unit) ? unitText({ value: 2, unit: props.unit }) : props.unit);
  const allowed = () => `${common.stepper.allowed(formatNumber(props.minimum), formatNumber(props.maximum))} ${unit()}`;
  const take = (value: number): void => {
    if (value < props.minimum || value > props.maximum) {
      setProblem(common.stepper.outside(props.label, `${formatNumber(value)} ${unit()}`, allowed()));
      return;
    }
    setProblem(undefined);
    props.onChange(value);
  };
  const enter = (typed: string): void => {
    setText(typed);
    if (typed.trim() === "") {
      setProblem(undefined);
      props.onChange(undefined);
      return;
    }
    const value = parseNumber(typed);
    if (value === undefined) setProblem(common.stepper.noNumber(props.label, typed, allowed()));
    else take(value);
  };
  const stepBy = (sign: 1 | -1) => (): void => {
    const from = props.value ?? props.start ?? props.minimum;
    take(props.value === undefined ? from : roundToStep(from + sign * props.step, props.step));
  };
  const down = makeHoldRepeat(stepBy(-1));
  const up = makeHoldRepeat(stepBy(1));
  onCleanup(() => {
    down.stop();
    up.stop();
  });
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    stepBy(event.key === "ArrowUp" ? 1 : -1)();
  };
  return (
    <div>
      <div class="stepper">
        <button type="button" aria-label={`${props.label}: ${common.less}`} {...buttonHandlers(down)}>
          −
        </button>
        <div class="stepper-field">
          <input
            type="text"
            inputmode="decimal"
            role="spinbutton"
            autocomplete="off"
            aria-label={`${props.label} (${unit()})`}
            aria-valuenow={props.value}
            aria-valuemin={props.minimum}
            aria-valuemax={props.maximum}
            aria-invalid={problem() !== undefined}
            value={text()}
            onChange={(event) => enter(event.currentTarget.value)}
            onKeyDown={onKeyDown}
          />
          <span class="unit">{unit()}</span>
        </div>
        <button type="button" aria-label={`${props.label}: ${common.more}`} {...buttonHandlers(up)}>
          +
        </button>
      </div>
      <Show when={problem()}>
        {(sentence) => (
          <p class="problem" role="alert">
            {sentence()}
          </p>
        )}
      </Show>
    </div>
  );
}

function buttonHandlers({ stop: _stop, ...handlers }: ReturnType<typeof makeHoldRepeat>) {
  return handlers;
}
