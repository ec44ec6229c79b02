// `npm run bench`, after `npm run build`. Times drift with the machine: the ratios of one run are what counts.
import { runSpeeds } from "./bundled.js";
import { importTimeTable } from "./import-time.js";
import { sizes, sizeTable } from "./sizes.js";

console.log(`${process.version}, ${process.platform} ${process.arch}\n`);
console.log(`${sizeTable(await sizes())}\n`);
console.log(`${importTimeTable()}\n`);
await runSpeeds();
