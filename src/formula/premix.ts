import type { FormulaLine, FormulaPremix } from "./types.js";

/** The lines of one premix, as shares of it. */
export interface Premix {
  readonly name: string;
  readonly lines: readonly { readonly material: string; readonly massFraction: number }[];
}

/** Premixes that hold premixes are opened so many deep, which no formula comes near. */
const depthMax = 100;

/** The way round from a premix back to itself, `["blend", "stock", "blend"]`, or one premix alone, which lies deeper than any is opened. */
export function endlessWay(premixes: ReadonlyMap<string, Premix>): readonly string[] | undefined {
  const depths = new Map<string, number>();
  const trail: string[] = [];
  /** How deep a premix goes, a material 0; undefined, with the way in `trail`, where it has no end. */
  const depthOf = (key: string): number | undefined => {
    const premix = premixes.get(key);
    if (!premix) return 0;
    const known = depths.get(key);
    if (known !== undefined) return known;
    const isRound = trail.includes(key);
    trail.push(key);
    if (isRound || trail.length > depthMax) return undefined;
    let depth = 0;
    for (const part of premix.lines) {
      const own = depthOf(part.material);
      if (own === undefined) return undefined;
      depth = Math.max(depth, own + 1);
    }
    if (depth > depthMax) return undefined;
    trail.pop();
    depths.set(key, depth);
    return depth;
  };
  for (const key of premixes.keys())
    if (depthOf(key) === undefined) return trail.slice(trail.indexOf(trail.at(-1) as string));
  return undefined;
}

/**
 * Opens premixes into their parts, at any depth. A material that then stands twice in one phase becomes one line;
 * the carrier stays the carrier.
 */
export function open(lines: readonly FormulaLine[], premixes: ReadonlyMap<string, Premix>): readonly FormulaLine[] {
  const shares = new Map<string, ReadonlyMap<string, number>>();
  // Each premix is opened once, however often it is used: nesting must not multiply the work.
  const open = (key: string): ReadonlyMap<string, number> => {
    const known = shares.get(key);
    if (known) return known;
    const opened = new Map<string, number>();
    for (const part of premixes.get(key)?.lines ?? [{ material: key, massFraction: 1 }])
      for (const [material, share] of part.material === key ? [[key, 1] as const] : open(part.material))
        opened.set(material, (opened.get(material) ?? 0) + share * part.massFraction);
    shares.set(key, opened);
    return opened;
  };
  const merged = new Map<string, FormulaLine>();
  for (const line of lines)
    for (const [material, share] of open(line.material)) {
      const place = JSON.stringify([line.phase, material]);
      const before = merged.get(place);
      const carrier = line.carrier && material === line.material;
      merged.set(place, {
        material,
        phase: line.phase,
        massFraction: line.massFraction * share + (before?.massFraction ?? 0),
        carrier: carrier || (before?.carrier ?? false),
      });
    }
  return [...merged.values()];
}

/** The premixes that the phases use, at any depth: what of the opened lines each of them brings. One that others hold comes before them. */
export function premixesOf(
  lines: readonly FormulaLine[],
  opened: readonly FormulaLine[],
  premixes: ReadonlyMap<string, Premix>,
): readonly FormulaPremix[] {
  const openedOf = byPhase(opened);
  return [...byPhase(lines)].flatMap(([phase, own]) => {
    const wholes = new Map((openedOf.get(phase) as readonly FormulaLine[]).map((line) => [line.material, line]));
    // Each premix once, those that hold others first.
    const visited = new Set<string>();
    const visit = (key: string): void => {
      const premix = premixes.get(key);
      if (!premix || visited.has(key)) return;
      for (const { material } of premix.lines) visit(material);
      visited.add(key);
    };
    for (const { material } of own) visit(material);
    const order = [...visited];
    const shares = new Map<string, number>();
    for (const { material, massFraction } of own) shares.set(material, (shares.get(material) ?? 0) + massFraction);
    for (const key of [...order].reverse())
      for (const { material, massFraction } of (premixes.get(key) as Premix).lines)
        shares.set(material, (shares.get(material) ?? 0) + (shares.get(key) as number) * massFraction);
    return order.flatMap((key): readonly FormulaPremix[] => {
      const share = shares.get(key) as number;
      const premix = premixes.get(key) as Premix;
      if (!(share > 0)) return [];
      const parts = premix.lines.filter(({ massFraction }) => massFraction > 0);
      return [
        {
          key,
          name: premix.name,
          phase,
          lines: parts.flatMap(({ material, massFraction }) => {
            const whole = wholes.get(material)?.massFraction ?? 0;
            return premixes.has(material) || !(whole > 0)
              ? []
              : [{ material, shareOfLine: Math.min(1, (share * massFraction) / whole) }];
          }),
          premixes: parts.flatMap(({ material, massFraction }) => {
            const whole = shares.get(material) ?? 0;
            return premixes.has(material) && whole > 0
              ? [{ premix: material, shareOfPremix: Math.min(1, (share * massFraction) / whole) }]
              : [];
          }),
        },
      ];
    });
  });
}

/** Lines by their phase, in the order in which the phases come. */
function byPhase(lines: readonly FormulaLine[]): ReadonlyMap<string, readonly FormulaLine[]> {
  const phases = new Map<string, FormulaLine[]>();
  for (const line of lines) {
    const own = phases.get(line.phase);
    if (own) own.push(line);
    else phases.set(line.phase, [line]);
  }
  return phases;
}
