// `npm run bench`, after `npm run build`. Times drift with the machine: the ratios of one run are what counts.
import { importTimeTable } from "./import-time.js";
import { processTable } from "./process.js";
import { settlingTable } from "./settling.js";
import { sizes, sizeTable } from "./sizes.js";
import { unitTables } from "./units.js";

console.log(`${process.version}, ${process.platform} ${process.arch}\n`);
console.log(`${sizeTable(await sizes())}\n`);
console.log(`${importTimeTable()}\n`);
console.log(`${await unitTables()}\n`);
console.log(`${await settlingTable()}\n`);
console.log(await processTable());
