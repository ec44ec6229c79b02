import type { Differences } from "./compare.js";

/** The differences as tables to read, by reason: how many, of which jobs, and each of them. */
export function markdownOf({ reasons, verdicts, figures }: Differences): string {
  const parts = Object.entries(reasons).map(([reason, sentence]) => {
    const ofVerdicts = verdicts.filter((one) => one.reason === reason);
    const ofFigures = figures.filter((one) => one.reason === reason);
    const rows = ofVerdicts.map(({ job, before, after }) => [
      job,
      before ? `\`${before.id}\`` : "",
      before?.verdict.replace("-", " ") ?? "not asked",
      after.map(({ key }) => `\`${key}\``).join(", "),
      after[0]?.verdict.replace("-", " ") ?? "not asked",
    ]);
    const figureRows = ofFigures.map(({ job, figure, change, largest }) => [
      job,
      `\`${figure}\``,
      change === "moved"
        ? `moved, by ${largest} of its value at most`
        : change === "gone"
          ? "not known any more"
          : "known now",
    ]);
    return [
      `## ${reason}`,
      sentence,
      ...(rows.length > 0 ? [table(["job", "check before", "verdict before", "question", "verdict"], rows)] : []),
      ...(figureRows.length > 0 ? [table(["job", "figure", "change"], figureRows)] : []),
    ].join("\n\n");
  });
  return `# What differs from the plan before it was rebuilt\n\nWritten by \`npx tsx tests/plan/jobs/differences.ts\` from \`differences.json\`; the tests hold that nothing else differs.\n\n${parts.join("\n\n")}\n`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
}
