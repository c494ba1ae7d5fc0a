/** `npm run schema`: writes the JSON Schema of a team's data where the program serves it. */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { teamDataJsonSchema } from "#core/exchange/team-data.ts";

const file = fileURLToPath(new URL("../client/public/team-data.schema.json", import.meta.url));
writeFileSync(file, `${JSON.stringify(teamDataJsonSchema(), null, 2)}\n`);
process.stdout.write(`${file}\n`);
