import { dot, line, text } from "@observablehq/plot";
import { type FormulaDocument, readFormula } from "gelwright/formula";
import type { Figure } from "./figure.js";

/** The document of the page *Formula*. */
const trial: FormulaDocument = {
  version: 1,
  name: "trial",
  materials: {
    former: { name: "gel former", function: "gel former" },
    almond: { name: "almond oil", function: "oil" },
    light: { name: "light ester", function: "oil" },
    tocopherols: { name: "tocopherols, 70 %", function: "antioxidant", strength: "70 %" },
  },
  premixes: {
    oils: {
      name: "oils",
      lines: [
        { material: "almond", amount: "3 parts" },
        { material: "light", amount: "1 parts" },
      ],
    },
  },
  phases: [
    {
      name: "A",
      lines: [
        { material: "former", amount: "9 %" },
        { material: "tocopherols", amount: "0.21 %", as: "active" },
        { material: "oils", amount: "q.s." },
      ],
    },
  ],
};

/** What the lines of a document say of each material: a share, or words. */
const written: Readonly<Record<string, { readonly words: string; readonly percent?: number }>> = {
  former: { words: "9 %", percent: 9 },
  tocopherols: { words: "0.21 % active", percent: 0.21 },
  almond: { words: "q.s., 3 parts" },
  light: { words: "q.s., 1 part" },
};

/** The lines of a formula as they are written, and as shares of the product. */
export function formulaAsRead(): Figure {
  const rows = readFormula(trial).lines.map(({ material, massFraction }) => ({
    name: trial.materials[material]?.name ?? material,
    words: written[material]?.words ?? "",
    written: written[material]?.percent,
    read: 100 * massFraction,
  }));
  const said = (percent: number) => `${percent.toFixed(3)} %`;
  const stated = rows.filter(({ written: percent }) => percent !== undefined);
  return {
    name: "formula-as-read",
    title: "The lines of a trial formula as they are written, and the shares that they become",
    description: `${rows.map(({ name, words, read }) => `${name}: written ${words}, read ${said(read)}`).join("; ")}. In sum ${rows.reduce((sum, { read }) => sum + read, 0).toFixed(0)} %.`,
    options: {
      height: 300,
      marginLeft: 150,
      marginRight: 110,
      x: {
        type: "log",
        domain: [0.03, 100],
        ticks: [0.1, 1, 10, 100],
        tickFormat: String,
        label: "share of the product, % by mass →",
      },
      y: { type: "point", domain: rows.map(({ name }) => name), label: null, padding: 0.6 },
      marks: [
        ...stated.map(({ name, written: from, read }) =>
          line([from, read], { x: (percent: number) => percent, y: () => name, strokeDasharray: "4 3" }),
        ),
        dot(stated, { x: "written", y: "name", r: 4, stroke: "currentColor" }),
        dot(rows, { x: "read", y: "name", r: 4, fill: "currentColor" }),
        text(rows, {
          x: ({ written: from, read }) => from ?? read,
          y: "name",
          text: "words",
          dx: -10,
          textAnchor: "end",
        }),
        text(rows, { x: "read", y: "name", text: ({ read }) => said(read), dx: 10, textAnchor: "start" }),
      ],
    },
  };
}
