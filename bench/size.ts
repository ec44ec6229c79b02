// Run by CI: exits with 1 when something weighs more than its budget.
import { budgetOf, sizes, sizeTable } from "./sizes.js";

const all = await sizes();
const over = all.filter((size) => size.bytes > budgetOf(size));
console.log(sizeTable(all));
for (const { what } of over) console.error(`over its budget: ${what}`);
process.exitCode = over.length > 0 ? 1 : 0;
