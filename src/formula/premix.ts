import type { FormulaLine, FormulaPremix } from "./types.js";

/** The lines of one premix, as shares of it. */
export interface Premix {
  readonly name: string;
  readonly lines: readonly { readonly material: string; readonly massFraction: number }[];
}

/** The way round from a premix back to itself, if there is one: `["blend", "stock", "blend"]`. */
export function findCycle(premixes: ReadonlyMap<string, Premix>): readonly string[] | undefined {
  const done = new Set<string>();
  const visit = (key: string, trail: readonly string[]): readonly string[] | undefined => {
    if (trail.includes(key)) return [...trail.slice(trail.indexOf(key)), key];
    if (done.has(key)) return undefined;
    for (const part of premixes.get(key)?.lines ?? []) {
      const cycle = visit(part.material, [...trail, key]);
      if (cycle) return cycle;
    }
    done.add(key);
    return undefined;
  };
  for (const key of premixes.keys()) {
    const cycle = visit(key, []);
    if (cycle) return cycle;
  }
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
  return [...new Set(lines.map(({ phase }) => phase))].flatMap((phase) => {
    const own = lines.filter((line) => line.phase === phase);
    const wholes = new Map(opened.filter((line) => line.phase === phase).map((line) => [line.material, line]));
    // Each premix once, those that hold others first.
    const order: string[] = [];
    const visit = (key: string): void => {
      const premix = premixes.get(key);
      if (!premix || order.includes(key)) return;
      for (const { material } of premix.lines) visit(material);
      order.push(key);
    };
    for (const { material } of own) visit(material);
    const shares = new Map<string, number>();
    for (const { material, massFraction } of own) shares.set(material, (shares.get(material) ?? 0) + massFraction);
    for (const key of [...order].reverse())
      for (const { material, massFraction } of premixes.get(key)?.lines ?? [])
        if (premixes.has(material))
          shares.set(material, (shares.get(material) ?? 0) + (shares.get(key) ?? 0) * massFraction);
    return order.flatMap((key): readonly FormulaPremix[] => {
      const share = shares.get(key) ?? 0;
      const premix = premixes.get(key);
      if (!premix || !(share > 0)) return [];
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
