import { createSignal, For } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { browserStorage } from "#client/device/storage/browser-storage.ts";
import { common } from "#client/text/common.ts";
import {
  type ChosenDimension,
  chosenDimensions,
  type ShownUnits,
  showUnits,
  unitChoices,
} from "#client/text/shown-units.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { storedUnits, storeUnits } from "./kept-units.ts";

/** In which units whoever holds the device reads and types. What is stored stays as it was typed. */
export function UnitChoice() {
  const device = useDevice();
  const storage = browserStorage();
  const [changed, setChanged] = createSignal<ShownUnits>();
  const units = () => changed() ?? storedUnits(storage, device.memberId());
  const choose = <Of extends ChosenDimension>(dimension: Of, unit: ShownUnits[Of]): void => {
    const { [dimension]: _before, ...others } = units();
    const next: ShownUnits = unit === undefined ? others : { ...others, [dimension]: unit };
    storeUnits(storage, device.memberId(), next);
    showUnits(next);
    setChanged(next);
  };
  return (
    <section class="stack">
      <h2>{common.units.title}</h2>
      <p>{common.units.hint}</p>
      <For each={chosenDimensions}>
        {(dimension) => (
          <Choice
            legend={common.units.of[dimension]}
            options={unitChoices[dimension]}
            labelOf={(unit) => unit}
            value={units()[dimension]}
            onChange={(unit) => choose(dimension, unit)}
          />
        )}
      </For>
    </section>
  );
}
