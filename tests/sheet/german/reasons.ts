import type { Change, QuantityCode, Reason } from "gelwright/plan";
import type { Say, Words } from "gelwright/sheet";

const names: Readonly<Record<string, readonly [name: string, quantity?: QuantityCode]>> = {
  temperature: ["die Temperatur", "temperature"],
  "temperature-end": ["die zu erreichende Temperatur", "temperature"],
  "temperature-start": ["die Anfangstemperatur", "temperature"],
  "temperature-bulk": ["die Temperatur des Ansatzes", "temperature"],
  "temperature-wall": ["die Wandtemperatur", "temperature"],
  "temperature-min": ["die tiefste Temperatur", "temperature"],
  "temperature-max": ["die höchste Temperatur", "temperature"],
  duration: ["die Dauer", "duration"],
  dose: ["der Anteil an Gelbildner", "mass-fraction"],
  "mass-fraction": ["der Massenanteil", "mass-fraction"],
  "mass-fraction-glycerin": ["der Glycerinanteil", "mass-fraction"],
  "volume-fraction": ["der Volumenanteil", "volume-fraction"],
  "volume-fraction-oil": ["der Ölanteil", "volume-fraction"],
  "reynolds-number": ["die Reynolds-Zahl"],
  reynolds: ["die Reynolds-Zahl"],
  viscosity: ["die Viskosität in Pa·s"],
  "shear-rate": ["die Scherrate in 1/s"],
  "yield-stress": ["die Fließgrenze", "stress"],
  strength: ["die Festigkeit", "stress"],
  speed: ["die Drehzahl", "speed"],
  volume: ["das Volumen", "volume"],
  level: ["der Füllstand", "length"],
  diameter: ["der Durchmesser", "length"],
  lots: ["die Zahl der Chargen", "count"],
  "level-to-vessel": ["der Füllstand, bezogen auf den Durchmesser"],
  "mass-to-add": ["die zuzugebende Masse", "mass"],
};

const unfit: Readonly<Record<string, string>> = {
  trials:
    "an die Versuche lässt sich keine Kurve anpassen: es braucht mehr davon, mit weiter auseinanderliegenden Anteilen, und Festigkeiten, die mit dem Anteil steigen",
  points: "an die Messwerte lässt sich keine Kurve anpassen: es braucht mehr davon, weiter auseinander",
};

function amountOf(value: number | null | undefined, quantity: string, say: Say): string {
  const code = names[quantity]?.[1];
  return code ? say.quantity(value, code) : say.number(value);
}

/** Ohne Namen hier ist es eine Größe, die nur der Rechenkern nennt. */
function nameOf(quantity: string): string {
  return names[quantity]?.[0] ?? "eine Größe der Rechnung";
}

/** Wovon ein Feld die Angabe ist. */
function fieldOf(
  { field, of }: { readonly field?: Reason["field"]; readonly of?: string | undefined },
  say: Say,
  words: Pick<Words, "fields">,
): string {
  const name = say.given(field, (code) => words.fields[code]) || "eine Angabe";
  const isOfMaterial = field?.startsWith("material-");
  return `${name}${say.given(of, (whose) => (isOfMaterial ? ` von ${say.material(whose)}` : ` (${say.material(whose)})`))}`;
}

const directions = { heating: "beim Erwärmen", cooling: "beim Abkühlen" } as const;

function about({ of }: Reason, say: Say): string {
  return say.given(of, (name) => ` (${say.material(name)})`);
}

function inStep({ step }: Reason, say: Say): string {
  return say.given(step, (number) => ` in ${say.step(number)}`);
}

function byLaw({ law, of }: Reason, say: Say, words: Pick<Words, "lawNames">): string {
  const parts = [say.given(law, (code) => words.lawNames[code]), say.given(of, say.material)].filter(
    (part) => part !== "",
  );
  return parts.length === 0 ? "" : ` (${parts.join(", ")})`;
}

function ofCharge({ phases, dose }: Reason, say: Say): string {
  return [
    say.given(phases, (all) => ` für ${say.list(all.map((name) => `Phase ${name}`))}`),
    say.given(dose, (share) => ` bei ${say.percent(share, 3)} Gelbildner`),
  ].join("");
}

function refused({ quantity, value, min, max }: Reason, say: Say): string {
  return say.given(quantity, (code) => {
    if (unfit[code] !== undefined) return unfit[code];
    const amount = say.given(value, (number) => ` (${amountOf(number, code, say)})`);
    const from = say.given(min, (end) => ` ab ${amountOf(end, code, say)}`);
    const to = say.given(max, (end) => ` bis ${amountOf(end, code, say)}`);
    return `${nameOf(code)}${amount} liegt außerhalb des Bereichs${from}${to}`;
  });
}

export const reasons: Words["reasons"] = {
  "not-stated": (reason, say, words) =>
    `${say.given(reason.at, () => "das Labor gibt nicht an") || "in den Unterlagen fehlt"}: ${fieldOf(reason, say, words)}${say.given(reason.step, (number) => `, nötig für ${say.step(number)}`)}`,
  "not-read": (reason, say, words) =>
    `nicht gemessen: ${fieldOf(reason, say, words)}${say.given(reason.direction, (way) => ` ${directions[way]}`)}${ofCharge(reason, say)}${say.given(reason.quantity, (code) => `; ${nameOf(code)} beträgt ${amountOf(reason.value, code, say)}`)}`,
  "outside-range": (reason, say, words) =>
    `${refused(reason, say) || "ein Wert liegt außerhalb des Bereichs"}${inStep(reason, say)}${byLaw(reason, say, words)}`,
  "no-correlation": (reason, say, words) =>
    `für diese Bauart von Rührer ist keine Korrelation bekannt${byLaw(reason, say, words)}`,
  "nothing-there": (reason, say, words) =>
    `es ist nichts da, woraus es zu rechnen wäre${say.given(reason.field, () => ` (${fieldOf(reason, say, words)})`) || about(reason, say)}${inStep(reason, say)}`,
  "not-done": (reason, say) => `kein Schritt des Verfahrens legt es fest${about(reason, say)}${inStep(reason, say)}`,
  contradiction: (reason, say, words) => `im Widerspruch zu einer anderen Angabe: ${fieldOf(reason, say, words)}`,
  "no-method": (reason, say, words) =>
    `kein Verfahren gibt dafür eine Zahl${inStep(reason, say)}${byLaw(reason, say, words)}`,
};

export const bases: Words["bases"] = {
  law: ({ key, of }, say, words) => `${words.laws[key]}${say.given(of, (name) => `, für ${say.material(name)}`)}`,
  reading: ({ key, of, source }, say, words) =>
    `${fieldOf({ field: key, of }, say, words)}, gemessen${say.given(source, (from) => ` (${from})`)}`,
  stated: ({ key, of, source }, say, words) =>
    `${fieldOf({ field: key, of }, say, words)}, wie angegeben${say.given(source, (from) => ` (${from})`)}`,
  practice: ({ key }, _say, words) => words.practices[key] ?? "übliche Praxis, keine Quelle",
};

function named(of: string | undefined, say: Say): string {
  return say.given(of, (name) => `${name}, `);
}

export const sources: Words["sources"] = {
  material: ({ of, property }, say) => `${say.material(of)}${say.given(property, (name) => `, ${name}`)}`,
  bench: () => "Erstarren, Lösen, Viskosität und Fließgrenze",
  "bench-emulsion": ({ of }, say) =>
    `Zugaben, Einarbeitung, Tröpfchen, Luft und Fließgrenze${say.given(of, (phase) => `, äußere Phase ${phase}`)}`,
  allowance: ({ of }, say) => `Zuschlag${say.given(of, (name) => `: ${name}`)}`,
  "heat-loss-by-surfaces": ({ of }, say) =>
    `${named(of, say)}Wärmeverlust durch freie Konvektion und Strahlung der Oberflächen`,
  "heat-loss-by-cooling-curve": ({ of }, say) =>
    `${named(of, say)}Wärmeverlust, an die Messwerte einer Abkühlkurve angepasst`,
  "heat-loss-stated": ({ of }, say) => `${named(of, say)}Wärmeverlust wie angegeben`,
  "pack-coefficient": ({ of }, say) => `${named(of, say)}Wärmeübergangskoeffizient an der Oberfläche`,
  "heated-wall": ({ of }, say) => `${named(of, say)}Wärmeübergangskoeffizient an der beheizten Wand`,
  jacket: ({ of }, say) => `${named(of, say)}Mantel`,
};

function atStep(change: Change, say: Say): string {
  return "step" in change ? ` in ${say.step(change.step)}` : "";
}

function dose(change: Change, say: Say): string {
  return `den Anteil${"material" in change ? ` von ${say.material(change.material)}` : ""}`;
}

export const levers: Words["levers"] = {
  "warmer-addition": (change, say) =>
    `Vor der Zugabe${atStep(change, say)} die Phase auf ${say.celsius(change.value)} anwärmen.`,
  "hotter-melt": (change, say) => `Die Schmelze${atStep(change, say)} auf ${say.celsius(change.value)} bringen.`,
  "shorter-filling": (change, say) => `Innerhalb von ${say.duration(change.value)} abfüllen${atStep(change, say)}.`,
  "faster-filling": (change, say) =>
    `Mindestens ${say.number(change.value)} Packungen je Minute abfüllen${atStep(change, say)}.`,
  "warmer-coolant": (change, say) => `Kühlmittel von ${say.celsius(change.value)} oder wärmer nehmen.`,
  "colder-coolant": (change, say) => `Kühlmittel von ${say.celsius(change.value)} oder kälter nehmen.`,
  "stronger-heater": (change, say) =>
    `Eine Heizung mit mindestens ${say.watts(change.value)} nehmen oder kleinere Chargen herstellen.`,
  "less-heat": (change, say) => `Höchstens auf ${say.celsius(change.value)} heizen${atStep(change, say)}.`,
  "slower-stirring": (change, say) => `Mit höchstens ${say.rpm(change.value)} rühren${atStep(change, say)}.`,
  "longer-stirring": (change, say) => `Mindestens ${say.duration(change.value)} rühren${atStep(change, say)}.`,
  "longer-rest": (change, say) => `Mindestens ${say.duration(change.value)} ruhen lassen${atStep(change, say)}.`,
  "longer-de-aeration": (change, say) => `Mindestens ${say.duration(change.value)} entlüften${atStep(change, say)}.`,
  "more-gel-former": (change, say) => `Auf ${say.percent(change.value)} erhöhen: ${dose(change, say)}.`,
  "cooler-melt": (change, say) =>
    `Die Schmelze auf ${say.celsius(change.value)} abkühlen lassen${atStep(change, say)}.`,
  "less-cooling": (change, say) => `Nicht unter ${say.celsius(change.value)} abkühlen${atStep(change, say)}.`,
  "more-surfactant": (change, say) => `Auf ${say.percent(change.value)} erhöhen: ${dose(change, say)}.`,
  "lower-share": (change, say) => `Auf ${say.percent(change.value)} senken: ${dose(change, say)}.`,
  "less-gel-former": (change, say) => `Auf ${say.percent(change.value)} senken: ${dose(change, say)}.`,
  "more-additions": (change, say) =>
    `In ${say.count(change.value)} gleichen Zugaben zugeben${atStep(change, say)}, jede vor der nächsten einrühren.`,
  "more-lots": (change, say) => `Daraus ${say.count(change.value)} gleiche Chargen herstellen.`,
};
