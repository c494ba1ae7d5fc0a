/** `npm run restore -- <file> --data <folder>`: makes a backup the log of an empty data folder. */
import { runCopyCommand } from "./copy-command.ts";
import { restoreLog } from "./store/restore.ts";

const help = `Puts a backup into an empty data folder. Then start the server on that folder: devices that have more send it.

  npm run restore -- <file> --data <folder>

Options
  --data <folder>  empty or new folder for the log
  --help           this text
`;

runCopyCommand({ help, defaultFolder: undefined, copy: restoreLog, done: "Restored" }, process.argv.slice(2));
