// The second half of `npm run coverage`.
import { keepCoverage } from "./record.js";

for (const line of keepCoverage()) {
  console.log(line);
  if (line.includes("below")) process.exitCode = 1;
}
