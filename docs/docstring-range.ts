/** Between which ends a number may lie, as far as its docstring gives them as numbers. */
export interface Range {
  readonly min?: number;
  readonly max?: number;
  /** Whether the end itself is not allowed. */
  readonly minExcluded?: true;
  readonly maxExcluded?: true;
}

const number = "(-?\\d[\\d ]*(?:\\.\\d+)?(?:e-?\\d+)?)";
const read = (text: string | undefined) => Number((text ?? "").replaceAll(" ", ""));

/** The range that a docstring states first: "above 0", "0 or more", "0 to 1", "above 0 and up to 1", "0 to below 1". */
export function rangeIn(said: string): Range {
  // Units are no ends; a range may stand in brackets as one does.
  const text = said
    .replaceAll(/\[(?![^\]]*\d to\b)[^\]]*\]/g, " ")
    .replaceAll(/[[\]]/g, " ")
    .replaceAll(/,(?=\d{3}\b)/g, "");
  const find = (form: string) => new RegExp(`(?<![\\w.])${form}(?![\\w%]|\\.\\d)`).exec(text);
  const both = find(`(above )?${number} (?:and )?(?:up )?(?:to|and) (below )?${number}`);
  const above = find(`above ${number}`);
  const min = find(`${number} or more`);
  const first = Math.min(above?.index ?? Number.POSITIVE_INFINITY, min?.index ?? Number.POSITIVE_INFINITY);
  if (both && both.index <= first) {
    const [from, to] = ends(both.slice(1));
    if (from && to) return { ...from, ...to };
  }
  const below = find(`below ${number}`);
  const max = find(`${number} or less`);
  return {
    ...(above && { min: read(above[1]), minExcluded: true as const }),
    ...(min && { min: read(min[1]) }),
    ...(below && { max: read(below[1]), maxExcluded: true as const }),
    ...(max && { max: read(max[1]) }),
  };
}

function ends([above, from, below, to]: readonly (string | undefined)[]): readonly [Range, Range] | [] {
  if (read(from) >= read(to)) return [];
  return [
    { min: read(from), ...(above && { minExcluded: true as const }) },
    { max: read(to), ...(below && { maxExcluded: true as const }) },
  ];
}
