import { axisX, axisY, dot, line, type Markish, plot, rect, ruleY, text } from "@observablehq/plot";
import { watchWidths } from "./fit.js";
import type { Axis, Dot, Panel, PanelArea, PanelLine } from "./panel.js";

const width = 640;

/** A panel as a figure of the page: the plot takes the page's colours, and words say what it shows. */
export function drawPanel(panel: Panel): HTMLElement {
  const picture = plot({
    width,
    height: 320,
    marginLeft: 56,
    marginRight: 24,
    marginTop: 36,
    marginBottom: 44,
    style: { fontSize: "13px" },
    x: scaleOf(panel.x, "→"),
    y: { ...scaleOf(panel.y, "↑"), nice: true },
    marks: [
      axisX({ label: labelOf(panel.x, "→"), labelOffset: 36, ...(panel.x.log && { tickFormat: String }) }),
      axisY({ label: labelOf(panel.y, "↑"), ...(panel.y.log && { tickFormat: String }) }),
      ...marksOf(panel),
    ],
  });
  picture.setAttribute("role", "img");
  picture.setAttribute("aria-label", `${panel.title}. ${panel.description}`);
  for (const mark of picture.querySelectorAll("[aria-label]")) mark.removeAttribute("aria-label");
  const figure = document.createElement("figure");
  const box = document.createElement("div");
  box.className = "wide";
  box.append(picture);
  const caption = document.createElement("figcaption");
  const title = document.createElement("strong");
  title.textContent = `${panel.title}. `;
  caption.append(title, panel.description);
  figure.append(caption, box);
  watchWidths(figure);
  return figure;
}

function labelOf({ label }: Axis, arrow: "→" | "↑"): string | null {
  if (label === "") return null;
  return arrow === "→" ? `${label} →` : `↑ ${label}`;
}

function scaleOf({ log, zero, names }: Axis, arrow: "→" | "↑"): object {
  if (names) return arrow === "→" ? { type: "point", domain: names, padding: 0.6 } : { type: "point", domain: names };
  return { type: log ? "log" : "linear", zero: zero === true };
}

function marksOf({ lines = [], areas = [], levels = [], dots = [], bars = [], x, y }: Panel): Markish[] {
  const bottom = y.log ? Math.min(...bars.map((bar) => bar.y)) / 2 : 0;
  const points = lines.flatMap((one, i) => one.points.map(([px, py]) => ({ x: px, y: py, i, dashed: one.dashed })));
  const ends = lines.flatMap(({ name, points: all }) => {
    const end = all.filter(([, py]) => py !== null).at(-1);
    return name && end ? [{ name, x: end[0], y: end[1] }] : [];
  });
  return [
    ...lines.map((_, i) =>
      line(
        points.filter((point) => point.i === i),
        { x: "x", y: "y", strokeWidth: 2, ...(lines[i]?.dashed && { strokeDasharray: "5 4" }) },
      ),
    ),
    rect(areas, {
      x1: ({ x: [from] }) => from,
      x2: ({ x: [, to] }) => to,
      y1: ({ y: [from] }) => from,
      y2: ({ y: [, to] }) => to,
      fill: "currentColor",
      fillOpacity: 0.15,
      stroke: "currentColor",
      strokeOpacity: 0.5,
    }),
    ...beside(areas, lines),
    rect(bars, {
      x1: ({ x: [from] }) => from,
      x2: ({ x: [, to] }) => to,
      y1: () => bottom,
      y2: "y",
      fill: "currentColor",
      fillOpacity: 0.35,
      stroke: "currentColor",
      inset: 0.5,
    }),
    ruleY(levels, { y: "y", strokeDasharray: "3 3" }),
    text(levels, {
      y: "y",
      text: "name",
      frameAnchor: "left",
      textAnchor: "start",
      dx: 4,
      dy: -8,
      stroke: "var(--ground)",
      fill: "currentColor",
      strokeWidth: 4,
    }),
    text(ends, { x: "x", y: "y", text: "name", dx: -6, dy: -8, textAnchor: "end" }),
    dot(dots, { x: "x", y: "y", r: 4, fill: "currentColor" }),
    ...dots.map((one) =>
      text([one], {
        x: "x",
        y: "y",
        text: "name",
        ...(x.names ? { dx: 8, dy: 0, textAnchor: "start" as const } : besideLine(one, lines)),
        stroke: "var(--ground)",
        fill: "currentColor",
        strokeWidth: 4,
      }),
    ),
  ];
}

/** Where the name of a dot stands so that the line through the dot does not cross it, nor the frame cut it off. */
function besideLine(
  { x }: Dot,
  lines: readonly PanelLine[],
): { readonly dx: number; readonly dy: number; readonly textAnchor: "start" | "end" } {
  const points = lines[0]?.points ?? [];
  const from = points[0];
  const to = points.at(-1);
  const right = { dx: 8, textAnchor: "start" } as const;
  const left = { dx: -8, textAnchor: "end" } as const;
  if (typeof x !== "number" || from?.[1] == null || to?.[1] == null) return { ...right, dy: -10 };
  const way = (x - from[0]) / (to[0] - from[0]);
  const rises = to[1] > from[1];
  if (rises) return way < 0.2 ? { ...right, dy: 12 } : { ...left, dy: -10 };
  return way > 0.8 ? { ...left, dy: 12 } : { ...right, dy: -10 };
}

/** Names of areas, above them, and within the frame: to the left of an area's end where it lies in the right half. */
function beside(areas: readonly PanelArea[], lines: readonly PanelLine[]): Markish[] {
  const all = lines.flatMap(({ points }) => points.map(([x]) => x));
  const middle = (Math.min(...all) + Math.max(...all)) / 2;
  const isRight = ({ x: [from, to] }: PanelArea) => (from + to) / 2 > middle;
  const named = { text: "name", dy: -8, stroke: "var(--ground)", fill: "currentColor", strokeWidth: 4 } as const;
  const top = ({ y: [, to] }: PanelArea) => to;
  return [
    text(areas.filter(isRight), { ...named, x: ({ x: [, to] }) => to, y: top, textAnchor: "end" }),
    text(
      areas.filter((area) => !isRight(area)),
      { ...named, x: ({ x: [from] }) => from, y: top, textAnchor: "start" },
    ),
  ];
}
