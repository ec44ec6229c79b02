// The second half of `npm run coverage`.
import { keepCoverage } from "./record.js";

for (const { line, enough } of keepCoverage()) {
  console.log(`${enough ? "" : "TOO FEW "}${line}`);
  if (!enough) process.exitCode = 1;
}
