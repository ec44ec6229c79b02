/** The forms in which a plan is shown and handed over, without what makes them. */
export const formNames = [
  { name: "Batch sheet", file: "sheet.md", type: "text/markdown" },
  { name: "Weighing, CSV", file: "weighing.csv", type: "text/csv" },
  { name: "Timeline, CSV", file: "timeline.csv", type: "text/csv" },
  { name: "Answers, CSV", file: "answers.csv", type: "text/csv" },
  { name: "Additions of oil, CSV", file: "additions.csv", type: "text/csv" },
  { name: "All figures, JSON", file: "plan.json", type: "application/json" },
] as const;
