import { type MissingFigure, measureNext } from "../plan/measure-next.js";
import type { Sheet } from "./render.js";
import { markdownTable } from "./table.js";
import { fieldOf } from "./words/fields.js";

/** What to measure next, each figure once, in place of a line for every answer that lacks it. */
export function measureNextOf(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { labels } = words;
  const { figures } = measureNext(plan);
  if (figures.length === 0) return [];
  const rows = figures.map((figure) => [
    nameOf(sheet, figure),
    words.lines.measure.ways[figure.how],
    say.count(figure.answers.length),
    say.count(figure.answers.filter(({ alone }) => alone).length),
  ]);
  const columns = [labels.toFindOut, labels.how, labels.checksWaiting, labels.checksAlone];
  return [`## ${labels.measureNext}`, labels.measureNextNote, markdownTable({ columns, rows })];
}

function nameOf({ words, say }: Sheet, figure: MissingFigure): string {
  const { phases = [], directions = [], dose } = figure;
  const name = fieldOf(figure, say, words);
  return words.lines.measure.figure({ name, phases, directions, ...(dose && { dose }) }, say);
}
