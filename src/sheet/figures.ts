import { convert } from "../units/index.js";

/** How many decimals a balance shows: what one of its increments needs, in the unit of the sheet. */
function decimalsOf(increment: number): number {
  const [digits = "", exponent = "0"] = increment.toExponential().split("e");
  const places = (digits.split(".")[1] ?? "").length;
  return Math.max(0, places - Number(exponent));
}

/** A mass as the balance shows it: grams below a kilogram, kilograms from there on, as many decimals as it can read. */
export function weighed(mass: number, increment: number): string {
  const unit = mass < 1 ? "g" : "kg";
  return `${convert(mass, "kg", unit).toFixed(decimalsOf(Number(convert(increment, "kg", unit).toPrecision(12))))} ${unit}`;
}

/** A mass that no balance has to show, to four digits where nothing else is said. */
export function kilograms(mass: number, digits = 4): string {
  const grams = mass < 1;
  return `${Number((grams ? convert(mass, "kg", "g") : mass).toPrecision(digits))} ${grams ? "g" : "kg"}`;
}

export function percent(fraction: number, digits = 4): string {
  return `${Number(convert(fraction, "kg/kg", "%").toPrecision(digits))} %`;
}

/** A content between its bounds: one figure where they meet. */
export function percentBetween({ min, max }: { readonly min: number; readonly max: number }): string {
  const [low, high] = [percent(min), percent(max)];
  return low === high ? low : `between ${low} and ${high} (an index is not known)`;
}

export function celsius(temperature: number | undefined): string {
  return temperature === undefined ? "not known" : `${temperature.toFixed(1)} °C`;
}

/** Time since the start as hours and minutes. */
export function clock(seconds: number | undefined): string {
  if (seconds === undefined) return "not known";
  const minutes = Math.round(seconds / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

/** A length of time in the unit that suits it. */
export function span(seconds: number): string {
  const hours = seconds / 3600;
  if (hours < 2) return `${Math.round(seconds / 60)} min`;
  return hours < 72 ? `${Number(hours.toPrecision(2))} h` : `${Number((hours / 24).toPrecision(2))} days`;
}

/** Equal lots need not hold whole packs. */
export function packCount(packs: number): string {
  return Number.isInteger(packs) ? String(packs) : `about ${packs.toFixed(1)}`;
}

/** Mass in a minute, in grams below a kilogram. */
export function massRate(specificRate: number): string {
  const aMinute = 60 * specificRate;
  return aMinute < 1 ? `${Number((1000 * aMinute).toPrecision(3))} g/min` : `${Number(aMinute.toPrecision(3))} kg/min`;
}
