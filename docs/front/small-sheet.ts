import { runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { exampleJob } from "../../tests/support/example.js";

/** The lines of a table under a heading, its head first. */
function tableUnder(sheet: string, heading: string): string[][] {
  const [, after = ""] = sheet.split(`\n## ${heading}\n`);
  const [part = ""] = after.split("\n## ");
  const rows = part.split("\n").filter((line) => line.startsWith("| "));
  if (rows.length < 3) throw new Error(`the sheet has no table under ${heading}`);
  return rows.map((row) =>
    row
      .split("|")
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

const written = (rows: readonly (readonly string[])[]) => {
  const [head = [], ...body] = rows.map((row) => `| ${row.join(" | ")} |`);
  const columns = rows[0]?.length ?? 0;
  return [head, `|${" --- |".repeat(columns)}`, ...body].join("\n");
};

/** Columns of a table, by their heads. */
function columns(rows: readonly (readonly string[])[], names: readonly string[]): string[][] {
  const places = names.map((name) => rows[0]?.indexOf(name) ?? -1);
  if (places.includes(-1)) throw new Error(`the sheet has no column ${names.join(" or ")}`);
  return rows.map((row) => places.map((place) => row[place] ?? ""));
}

/** The sheet of the example in small: what to weigh, the steps around the cold oil and the glitter, and what fails. */
export function smallSheet(): string {
  const sheet = toMarkdown({ plan: runPlan(exampleJob()) });
  const weigh = columns(tableUnder(sheet, "Weigh"), ["Phase", "Material", "Weigh"]);
  const steps = columns(tableUnder(sheet, "Do"), ["Step", "Do", "Planned temperature"]);
  const fails = sheet.split("\n").find((line) => line.startsWith("- NOT MET")) ?? "";
  // A part of a step has no number of its own.
  const numbered = steps.filter(([step = ""]) => /\d/.test(step));
  const short = numbered
    .slice(4, 8)
    .map(([step = "", what = "", at = ""]) => [step, what.split(/: |\. /)[0] ?? "", at]);
  return [
    ...sheet
      .split("\n")
      .slice(0, 1)
      .map((title) => title.replace("# ", "**").concat("**")),
    "",
    written(weigh),
    "",
    written([["Step", "Do", "Planned"], ...short]),
    "",
    fails.replace("- NOT MET:", "**Not met:**").split(" Limit:")[0] ?? "",
  ].join("\n");
}
