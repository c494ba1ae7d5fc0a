/** `npm run backup -- <file>`: copies the log into one file, also while the server runs. */
import { runCopyCommand } from "./copy-command.ts";
import { backUpLog } from "./store/back-up.ts";

const help = `Copies the records of a data folder into one new file. The server may go on meanwhile.

  npm run backup -- <file> [--data <folder>]

Options
  --data <folder>  folder of the log (default ./data)
  --help           this text
`;

runCopyCommand(
  { help, defaultFolder: "./data", copy: (file, folder) => backUpLog(folder, file), done: "Backed up" },
  process.argv.slice(2),
);
