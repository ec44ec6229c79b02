import { htmlText } from "./escape.js";

/** One axis: its ends, where it has marks, and how they are written. */
export interface Axis {
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly ticks: readonly number[];
  readonly write: (value: number) => string;
}

/** A line through points; dashed where it is no measurement of the batch itself. */
export interface Line {
  readonly points: readonly (readonly [number, number])[];
  readonly isDashed?: boolean;
  readonly label?: string;
}

/** A region that is hatched, with its name. */
export interface Region {
  /** The corners, in order. */
  readonly corners: readonly (readonly [number, number])[];
  readonly label?: string;
}

/** A drawing in black on white: lines, hatched regions, and names at places along the horizontal axis. */
export interface Chart {
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly lines: readonly Line[];
  readonly regions?: readonly Region[];
  /** Names of stretches of the horizontal axis, such as steps. */
  readonly stretches?: readonly { readonly from: number; readonly to: number; readonly label: string }[];
}

const size = { width: 720, height: 250, left: 62, right: 14, top: 22, bottom: 40 };

/** A chart as SVG that needs nothing from elsewhere. */
export function svgOf(chart: Chart): string {
  const { title, x, y, lines, regions = [], stretches = [] } = chart;
  const at = placing(x, y);
  return [
    `<svg viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${htmlText(title)}" font-size="11" font-family="inherit">`,
    '<defs><pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V6" stroke="#000" stroke-width=".8"/></pattern></defs>',
    ...x.ticks.map((tick) => verticalMark(at, x, tick)),
    ...y.ticks.map((tick) => horizontalMark(at, y, tick)),
    ...regions.map((region) => regionOf(at, region)),
    ...stretches.map((stretch) => stretchOf(at, stretch)),
    ...lines.map((line) => lineOf(at, line)),
    `<path d="M${size.left} ${size.top}V${size.height - size.bottom}H${size.width - size.right}" fill="none" stroke="#000"/>`,
    text(size.width / 2, size.height - 6, x.label, "middle"),
    text(4, 12, y.label, "start"),
    "</svg>",
  ].join("\n");
}

type Placing = (x: number, y: number) => readonly [number, number];

function placing(x: Axis, y: Axis): Placing {
  const { width, height, left, right, top, bottom } = size;
  const part = (value: number, { min, max }: Axis): number => (max > min ? (value - min) / (max - min) : 0.5);
  return (across, up) => [
    left + part(across, x) * (width - left - right),
    height - bottom - part(up, y) * (height - top - bottom),
  ];
}

function verticalMark(at: Placing, { write }: Axis, tick: number): string {
  const [across] = at(tick, 0);
  const foot = size.height - size.bottom;
  return `<path d="M${short(across)} ${foot}v4" stroke="#000"/>${text(across, foot + 15, write(tick), "middle")}`;
}

function horizontalMark(at: Placing, { write }: Axis, tick: number): string {
  const [, up] = at(0, tick);
  return `<path d="M${size.left} ${short(up)}H${size.width - size.right}" stroke="#bbb" stroke-width=".5"/>${text(size.left - 5, up + 4, write(tick), "end")}`;
}

function regionOf(at: Placing, { corners, label }: Region): string {
  const points = corners.map(([across, up]) => at(across, up));
  const [first = [0, 0], second = first] = points;
  const name =
    label === undefined
      ? ""
      : text((first[0] + second[0]) / 2, Math.min(...points.map(([, up]) => up)) - 3, label, "middle");
  return `<polygon points="${joined(points)}" fill="url(#hatch)" stroke="#000" stroke-width=".6"/>${name}`;
}

function stretchOf(at: Placing, { from, to, label }: NonNullable<Chart["stretches"]>[number]): string {
  const [[start], [end]] = [at(from, 0), at(to, 0)];
  const line = `<path d="M${short(start)} ${size.top}V${size.height - size.bottom}" stroke="#000" stroke-width=".4" stroke-dasharray="1 3"/>`;
  // A stretch that is narrower than its name goes without.
  return end - start < 10 + 6 * label.length
    ? line
    : `${line}${text((start + end) / 2, size.top - 4, label, "middle")}`;
}

function lineOf(at: Placing, { points, isDashed, label }: Line): string {
  const placed = points.map(([across, up]) => at(across, up));
  const [start = [0, 0]] = placed;
  const dashes = isDashed ? ' stroke-dasharray="6 4" stroke-width="1"' : ' stroke-width="1.6"';
  const name = label === undefined ? "" : text(start[0] + 4, start[1] - 4, label, "start");
  return `<polyline points="${joined(placed)}" fill="none" stroke="#000"${dashes}/>${name}`;
}

function text(x: number, y: number, of: string, anchor: "start" | "middle" | "end"): string {
  return `<text x="${short(x)}" y="${short(y)}" text-anchor="${anchor}">${htmlText(of)}</text>`;
}

function joined(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y]) => `${short(x)},${short(y)}`).join(" ");
}

/** A tenth of a point is finer than any printer. */
function short(value: number): number {
  return Math.round(10 * value) / 10;
}

/** Round values between two ends, about so many. */
export function roundTicks(min: number, max: number, count = 5): readonly number[] {
  const rough = (max - min) / count;
  if (!(rough > 0)) return [min];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5].find((factor) => factor * power >= rough) ?? 10) * power;
  return multiples(min, max, step);
}

/** Round times between two ends [s]: minutes and hours that a clock shows. */
export function timeTicks(min: number, max: number): readonly number[] {
  const steps = [1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 1440].map((minutes) => 60 * minutes);
  const step = steps.find((one) => (max - min) / one <= 8) ?? (max - min) / 8;
  return step > 0 ? multiples(min, max, step) : [min];
}

function multiples(min: number, max: number, step: number): readonly number[] {
  const first = Math.ceil(min / step - 1e-9);
  const last = Math.floor(max / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}
