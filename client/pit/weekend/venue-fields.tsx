import { createMemo, createUniqueId, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { Field } from "#client/pit/field.tsx";
import { weekend as words } from "#client/text/weekend.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { Stepper } from "#client/widgets/stepper.tsx";
import type { WeekendFormState } from "./create-weekend-form.ts";
import { LabelledInput } from "./labelled-input.tsx";
import { NEW_VENUE, NO_VENUE } from "./weekend-draft.ts";
import { knownVenues } from "./weekend-values.ts";

/** A venue that is known, or a new one. */
export function VenueFields(props: { form: WeekendFormState }) {
  const device = useDevice();
  const chooser = createUniqueId();
  const chosen = createMemo(() => props.form.draft().venue);
  const altitude = createMemo(() => props.form.draft().venueAltitude);
  const venues = createMemo(() => knownVenues(device.ledger()));
  return (
    <>
      <div>
        <label class="field" for={chooser}>
          {words.venue}
        </label>
        <select id={chooser} onChange={(event) => props.form.set({ venue: event.currentTarget.value })}>
          <Show when={chosen() === NO_VENUE}>
            <option value={NO_VENUE} selected>
              {words.chooseVenue}
            </option>
          </Show>
          <For each={venues()}>
            {({ id, venue }) => (
              <option value={id} selected={id === chosen()}>
                {words.knownVenue(venue.name, formatQuantity(venue.altitude))}
              </option>
            )}
          </For>
          <option value={NEW_VENUE} selected={chosen() === NEW_VENUE}>
            {words.newVenue}
          </option>
        </select>
      </div>
      <Show when={chosen() === NEW_VENUE}>
        <LabelledInput
          label={words.venueName}
          type="text"
          value={props.form.draft().venueName}
          onInput={(venueName) => props.form.set({ venueName })}
        />
        <Field label={words.venueAltitude}>
          <Stepper
            label={words.venueAltitude}
            unit="m"
            value={altitude()}
            step={50}
            start={0}
            minimum={-400}
            maximum={5000}
            onChange={(venueAltitude) => props.form.set({ venueAltitude })}
          />
          <p class="small pit-hint">{words.venueAltitudeHint}</p>
        </Field>
      </Show>
    </>
  );
}
