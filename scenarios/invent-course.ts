/** `npm run course`: writes the invented course of the demo weekend, `scenarios/kestrel-ridge.gpx`. */
import { writeFileSync } from "node:fs";
import { demoCourse } from "./course/demo-course.ts";
import { inventedCourse } from "./course/invented-course.ts";

const file = new URL("kestrel-ridge.gpx", import.meta.url);
writeFileSync(file, inventedCourse(demoCourse.name, demoCourse.seed).gpx);
process.stdout.write(`Written: ${file.pathname}\n`);
