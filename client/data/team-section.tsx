import { createSignal } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { download } from "#client/shell/hand-off-file.ts";
import { data } from "#client/text/data.ts";
import { FileField } from "#client/widgets/file-field.tsx";
import { today } from "#client/widgets/today.ts";
import { readTeamData } from "#core/exchange/read-team-data.ts";
import { teamData } from "#core/exchange/team-data.ts";
import { createImport } from "./create-import.ts";
import { ImportSteps } from "./import-steps.tsx";
import { pause } from "./pause.ts";
import { readFile } from "./read-file.ts";

/** All values of the team as one JSON file, and back. */
export function TeamSection() {
  const device = useDevice();
  const steps = createImport(device, pause);
  const [said, setSaid] = createSignal<string>();
  const save = (): void => {
    const name = `team-data-${today()}.json`;
    const text = JSON.stringify(teamData(device.ledger(), new Date().toISOString()), null, 2);
    download(new File([text], name, { type: "application/json" }));
    setSaid(data.saved(name));
  };
  const choose = async (file: File): Promise<void> => {
    const read = await readFile(file);
    if (!read.ok) return steps.refuse(read.problem.sentence);
    await steps.look(file.name, () => readTeamData(read.text));
  };
  return (
    <section class="card stack">
      <h2>{data.team.title}</h2>
      <button type="button" onClick={save}>
        {data.team.save}
      </button>
      <output>{said()}</output>
      <FileField
        label={data.team.take}
        hint={data.team.hint}
        accept=".json,application/json"
        onFile={(file) => void choose(file)}
      />
      <a class="button" href="/team-data.schema.json" download="team-data.schema.json">
        {data.team.schema}
      </a>
      <ImportSteps steps={steps} />
    </section>
  );
}
