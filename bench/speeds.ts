// All that is timed beside other libraries, in one process. `bundled.ts` runs it.
import { planTable } from "./plan.js";
import { processTable } from "./process.js";
import { settlingTable } from "./settling.js";
import { unitTables } from "./units.js";

for (const tableOf of [unitTables, settlingTable, processTable, planTable]) console.log(`${await tableOf()}\n`);
