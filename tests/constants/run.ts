// Changes every constant that ships, runs the checks on each change, and keeps what was found in proofs.json.
import { rankOf } from "../support/check.js";
import { instrument } from "./instrumented.js";
import { prove, reachOf } from "./prove.js";
import { type Found, readReasons, readRecords, reasonOf, withinFile, writeRecords } from "./records.js";

const library = await instrument();
const reach = reachOf(library);
const reasons = readReasons();
const records: Record<string, Record<string, Found>> = {};
const byRank = [0, 0, 0, 0];
const survivors: string[] = [];
const [only] = process.argv.slice(2);
for (const [index, constant] of library.constants.entries()) {
  if (only !== undefined && !constant.key.includes(only)) continue;
  if (index % 200 === 0) process.stderr.write(`${index} of ${library.constants.length}\n`);
  const { by, survives } = prove(library, reach, index);
  const found = survives.length === 0 && by ? by.id : { ...(by && { by: by.id }), survives };
  records[constant.file] = { ...records[constant.file], [withinFile(constant)]: found };
  if (by) byRank[rankOf(by)] = (byRank[rankOf(by)] ?? 0) + 1;
  if (survives.length > 0)
    survivors.push(
      `${constant.key} ${constant.text}: ${survives.join(", ")}${reasonOf(reasons, constant.key, survives) ? "" : " (no reason)"}`,
    );
}
for (const line of survivors) console.log(line);
const [outside, method, same, word] = byRank;
console.log(
  `${library.constants.length} constants; changed by 1 %: ${outside} fail a check from outside, ${method} one by an independent method, ${same} one by the same formula, ${word} one from memory; ${survivors.length} survive some change`,
);
// A part of the constants is put into what the last run found of the others, less what there is no more.
const keys = new Set(library.constants.map(({ key }) => key));
const rest = Object.entries(only === undefined ? {} : readRecords()).map(([file, names]) => {
  const left = Object.entries(names).filter(([name]) => keys.has(`${file}#${name}`));
  return [file, { ...Object.fromEntries(left), ...records[file] }] as const;
});
const all = { ...records, ...Object.fromEntries(rest) };
writeRecords(Object.fromEntries(Object.entries(all).sort(([a], [b]) => (a < b ? -1 : 1))));
