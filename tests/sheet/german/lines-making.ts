import type { Lines, Say } from "gelwright/sheet";
import { grades } from "./codes.js";

function equalLots(lots: number, say: Say): string {
  return lots === 1 ? "einer Charge" : `${say.count(lots)} gleichen Chargen`;
}

/** Wobei ein Kessel gehalten wird. */
function keptAt(
  { min, max }: { readonly min: number | undefined; readonly max: number | undefined },
  say: Say,
): string {
  if (min !== undefined && max !== undefined && max > min)
    return `zwischen ${say.celsius(min)} und ${say.celsius(max)}`;
  return `bei mindestens ${say.celsius(min)}`;
}

export const batch: Lines["batch"] = {
  samplesToTake: ({ name, parts, mass }, say) =>
    `${name}: ${parts.length === 0 ? "" : `${parts.join(", ")}; `}zusammen ${say.kilograms(mass, 3)}`,
  lots: ({ count }, say) => `____ von ${say.count(count)} gleichen Chargen`,
  charge: ({ mass, volume }, say) =>
    `${say.kilograms(mass)}${say.given(volume, (known) => `, ${say.litres(known, 3)} bei ${say.celsius(20)}`)}`,
  open: ({ verdict, statement, value, limit }) =>
    `${verdict.toUpperCase()}: ${statement}${value === undefined ? "" : ` Wert: ${value}.`} Grenze: ${limit}.`,
  portions: ({ whole, portions }) => `${whole}, als ${portions.join(" + ")}`,
  total: ({ total }) => `Einwaage zusammen: ${total}`,
  aboutSubject: ({ question, subject }) => `${question} (${subject})`,
  phase: ({ phase }) => `Phase ${phase}`,
  notKnown: ({ reason }) => `Nicht bekannt: ${reason}.`,
  notKnownClause: ({ reason }) => `nicht bekannt, denn ${reason}`,
  asked: ({ mass }, say) => `Verlangt: ${say.kilograms(mass)}.`,
  askedInPacks: ({ mass, packs, pack }, say) =>
    `Verlangt: ${say.kilograms(mass)} in ${Number.isInteger(packs) ? "" : "etwa "}${say.number(packs, 5)} Packungen${say.given(pack, (name) => ` (${name})`)}.`,
  delivered: ({ mass }, say) => `Der Ansatz liefert ${say.kilograms(mass)}.`,
  filmOnWall: ({ thickness }, say) =>
    `Nach der Viskosität am Ende des Abfüllens ist ein Film von im Mittel ${say.millimetres(thickness, 2)} nicht von der Wand abgelaufen.`,
  filmAllowedFor: ({ thickness, predicted }, say) =>
    `Der Film im Kessel zählt, wie angegeben, mit ${say.millimetres(thickness, 2)}; vorhergesagt: ${say.millimetres(predicted, 2)}.`,
  film: {
    wall: ({ name }) => `${name}, an der Wand`,
    bottom: ({ name }) => `${name}, am Boden`,
  },
  timesOfDays: ({ workingDay, days }, say) =>
    `Zeiten zählen ab Beginn jedes Arbeitstags von ${say.duration(workingDay)}, ohne Reserve für Handgriffe; Arbeitstage insgesamt: ${say.count(days)}. Eine Charge wird nicht unterbrochen.`,
  stage: ({ step, instruction }) => `${step}. ${instruction}`,
  content: ({ min }, say) => say.percent(min),
  contentBetween: ({ min, max }, say) =>
    `zwischen ${say.percent(min)} und ${say.percent(max)} (ein Index ist nicht bekannt)`,
  naturalOrigin: ({ withWater }) => `Anteil natürlichen Ursprungs: ${withWater} mit Formulierungswasser.`,
  naturalOriginBoth: ({ withWater, withoutWater }) =>
    `Anteil natürlichen Ursprungs: ${withWater} mit Formulierungswasser, ${withoutWater} ohne.`,
  naturalOriginEitherWay: ({ content }) =>
    `Anteil natürlichen Ursprungs: ${content}, mit oder ohne Formulierungswasser.`,
  shortfall: ({ material, share }, say) => `${material} nimmt davon ${say.percent(share)} weg.`,
  shortfallBetween: ({ material, min, max }, say) =>
    `${material} nimmt davon ${say.percent(min)} bis ${say.percent(max)} weg: ein Index davon ist nicht bekannt.`,
  parts: {
    active: ({ material }) => `${material}, Wirkstoff,`,
    carrier: ({ material }) => `${material}, Träger,`,
  },
  largestGelFormer: ({ material, share }, say) =>
    `Höchstens ${say.percent(share)} ${material} würden die ausgelobte Zahl einhalten.`,
  cost: ({ batch: all, perKilogram, currency }, say) =>
    `Alle Chargen: ${say.money(all)} ${currency}; je geliefertem Kilogramm: ${say.money(perKilogram)} ${currency}.`,
  costWithPack: ({ batch: all, perKilogram, perPack, currency }, say) =>
    `Alle Chargen: ${say.money(all)} ${currency}; je geliefertem Kilogramm: ${say.money(perKilogram)} ${currency}; je Packung: ${say.money(perPack, 3)} ${currency}.`,
  ofStabilityTest: ({ count }, say) =>
    `${say.count(count)} ${count === 1 ? "Probe" : "Proben"} für die Stabilitätsprüfung`,
  ofFillChecks: ({ count }, say) => `${say.count(count)} ${count === 1 ? "Packung" : "Packungen"} für Füllprüfungen`,
  ofPacks: ({ count }, say) => `${say.count(count)} Rückstellmuster`,
  samplesOfLot: ({ name, parts, mass }, say) =>
    `Aus jeder Charge (${name}): ${parts.join(", ")}; zusammen ${say.kilograms(mass, 4)}.`,
  stockMakes: ({ mass, lots }, say) =>
    `Der Vorrat reicht höchstens für ${say.kilograms(mass, 5)} in ${equalLots(lots, say)}.`,
  stockMakesInPacks: ({ mass, packs: count, lots }, say) =>
    `Der Vorrat reicht höchstens für ${say.count(count)} Packungen (${say.kilograms(mass, 5)}) in ${equalLots(lots, say)}.`,
  limitedBy: ({ materials }) => `Zuerst geht aus: ${materials.join(" und ")}.`,
  limitedByVessel: () =>
    "Für eine weitere Charge ist der Rest zu wenig: sie füllte den Kessel nicht bis zum kleinsten Nutzvolumen.",
  sourceOf: ({ of, from }) => `${of}: ${from}`,
  foot: ({ title, product, documents, batchNumber }) =>
    `${title}: ${product} · ${documents} · ${batchNumber}: ______________`,
  comparedBy: ({ library }) => `Verglichen mit ${library}.`,
  computed: ({ library, fingerprint }) =>
    `Gerechnet mit ${library} aus Unterlagen mit dem Fingerabdruck ${fingerprint}.`,
};

export const kettle: Lines["kettle"] = {
  wetBeforehand: ({ material, mass }, say) =>
    `Mindestens ${say.kilograms(mass, 3)} des für diese Charge eingewogenen Öls zurückbehalten und mit ${material} anteigen. Dieses Öl mit der Paste zugeben, nicht mit seiner eigenen Phase; kein zusätzliches Öl nehmen.`,
  forVessel: ({ material }) => `${material}, für den Kessel`,
  forPaste: ({ material }) => `${material}, für die Paste`,
  forPremix: ({ material, premix }) => `${material}, für die Vormischung ${premix}`,
  dusty: ({ material }) => `${material} (Staub: Maske und Absaugung an)`,
  makePaste: ({ material, mass, oil, massOil, total }) =>
    `Die Paste herstellen: ${mass} ${material} in ${massOil} ${oil} einrühren, bis kein trockenes Pulver übrig ist (${total}). Staubmaske und Absaugung an`,
  oilOfPaste: () =>
    "Das Öl für eine Paste getrennt aufbewahren: es kommt mit der Paste hinein. Geplante Temperaturen und der Verlauf zählen es bei seiner Phase.",
  premixBeforehand: ({ name, phase, materials, total }) =>
    `Vor dem Beginn die Vormischung ${name} für Phase ${phase} aus dem für diese Charge Eingewogenen herstellen: ${materials.join(" + ")}, zusammen ${total}.`,
  mixBeforehand: ({ phase }) =>
    `Vor dem Beginn die ganze Phase ${phase} mischen. Jede Zugabe wird aus dieser Mischung entnommen.`,
  mixForPump: ({ phase }) => `Vor dem Beginn die ganze Phase ${phase} mischen. Die Pumpe fördert aus dieser Mischung.`,
  fromTo: ({ from, to }) => `${from}–${to}`,
  since: ({ from }) => `ab ${from}`,
  stirrerOff: ({ instruction }) => `${instruction}, Rührer aus`,
  holdUnstirred: ({ instruction }) => `${instruction}, Rührer aus (hier plant das Verfahren kein Rühren)`,
  before: ({ time }) => `vor ${time}`,
  sentences: ({ instruction, more }) => [instruction, ...more].join(". "),
  onlyBetween: ({ instruction, min, max }, say) =>
    min !== undefined && max !== undefined
      ? `${instruction}, nur zwischen ${say.celsius(min)} und ${say.celsius(max)}`
      : `${instruction}, nur bei ${min === undefined ? `höchstens ${say.celsius(max)}` : `mindestens ${say.celsius(min)}`}`,
  neverAbove: ({ instruction, max }, say) => `${instruction}, nie über ${say.celsius(max)}`,
  maskOn: () => "Staubmaske und Absaugung an",
  stirByHand: () => "Kein Rührer ist angegeben: währenddessen von Hand rühren, auch an der beheizten Wand",
  onceDissolved: () => "Erst dann, wenn kein Klumpen und kein Korn des Gelbildners mehr da ist",
  lockOut: () => "Vor jedem Hineingreifen den Rührer gegen Einschalten sichern",
  airBackIn: () =>
    "Dabei den Schaum beobachten. Dann den Rührer abstellen, langsam belüften und erst öffnen, wenn das Manometer kein Vakuum mehr zeigt",
  stopBelow: ({ min }, say) =>
    `Aufhören, wenn der Kessel kälter als ${say.celsius(min)} ist, und den Rest zurückstellen, bis der Verantwortliche der Rezeptur darüber entscheidet`,
  premixOf: ({ name, mass }) => `${mass} Vormischung ${name}`,
  asPaste: ({ material, oil, mass }) => `${mass} Paste aus ${material} und ${oil}`,
  massOf: ({ material, mass }) => `${mass} ${material}`,
  charged: ({ instruction, materials }) => `${instruction}: ${materials.join(" + ")}`,
  noted: ({ instruction, note }) => `${instruction}. ${note}`,
  fillMass: ({ mass, pack }, say) =>
    `${say.kilograms(mass)} in Packungen füllen${say.given(pack, (name) => ` (${name})`)}.`,
  fillPacks: ({ count, pack, mass }, say) =>
    `${say.count(count)} Packungen füllen${say.given(pack, (name) => ` (${name})`)}, je ${say.kilograms(mass)} netto.`,
  fillFewer: ({ count, asked }, say) =>
    `Verlangt sind ${say.count(asked)} Packungen; bei dieser Füllmenge reicht der Ansatz für ${say.count(count)}.`,
  gross: ({ single, mean, count }, say) =>
    `Füllmenge: zu Beginn, zwischendurch und am Ende ${say.count(count)} Packungen hintereinander mit Verschluss wiegen. Den Abfüller nachstellen, wenn eine außerhalb von ${say.range(say.kilograms(single.min), say.kilograms(single.max))} liegt oder ihr Mittel außerhalb von ${say.range(say.kilograms(mean.min), say.kilograms(mean.max))}.`,
  weighWhereFilled: () =>
    "Den Abfüller anhalten und die zu wiegenden Packungen auf der Waage selbst füllen, den Verschluss jeweils daneben: sie dürfen noch nicht bewegt oder verschlossen werden.",
  noContentControl: ({ reason }) => `Kontrolle der Füllmenge nicht geplant: ${reason}.`,
  eachPack: ({ first, second }, say) =>
    `Zweimal gießen: zuerst ${say.kilograms(first)}, und ${say.kilograms(second, 3)}, sobald das abgekühlt ist, bevor eine Haut erstarrt.`,
  rate: ({ packsPerMinute, duration }, say) =>
    `Geplante Geschwindigkeit: mindestens ${say.number(packsPerMinute, 3)} Packungen je Minute, damit alle innerhalb von ${say.duration(duration)} voll sind.`,
  rateOfMass: ({ rate, duration }, say) =>
    `Geplante Geschwindigkeit: mindestens ${say.massRate(rate, 3)}, damit alles innerhalb von ${say.duration(duration)} abgefüllt ist.`,
  warmth: ({ first, last }, say) =>
    `Vorhergesagte Temperatur im Kessel: ${say.celsius(first)} bei der ersten Packung, ${say.celsius(last)} bei der letzten.`,
  warmthWhileFull: ({ first, last }, say) =>
    `Vorhergesagte Temperatur im Kessel: ${say.celsius(first)} bei der ersten Packung, ${say.celsius(last)} am Ende, gerechnet für einen vollen Kessel. Der Rest darin kühlt schneller ab: bei den letzten Packungen die Temperatur messen.`,
  warmthThroughout: ({ temperature }, say) => `Vorhergesagte Temperatur im Kessel: ${say.celsius(temperature)}.`,
  tooCoolToStart: ({ first, ...keep }, say) =>
    `Die erste Packung ist bei ${say.celsius(first)} geplant, das ist zu kalt. Nichts füllen, bis der Kessel warm genug ist, und ihn ${keptAt(keep, say)} halten, bis die letzte Packung voll ist.`,
  coolsTooSoon: ({ duration, min }, say) =>
    `Der Kessel kühlt voraussichtlich ${say.duration(duration)} nach der ersten Packung unter ${say.celsius(min)} ab.`,
  mayCoolTooSoon: ({ min }, say) =>
    `Je weniger im Kessel ist, desto schneller kühlt es ab: Es kann kälter als ${say.celsius(min)} sein, bevor die letzte Packung voll ist.`,
  packsInTime: ({ full, count }, say) =>
    `Bei der geplanten Geschwindigkeit sind bis dahin ${say.number(full, 2)} von ${say.count(count)} Packungen voll.`,
  inTime: ({ packsPerMinute, duration, ...keep }, say) =>
    `Damit sicher alle voll werden: ${packsPerMinute === undefined ? `innerhalb von ${say.duration(duration)} füllen` : `mindestens ${say.number(packsPerMinute, 3)} Packungen je Minute`}, oder den Kessel ${keptAt(keep, say)} halten.`,
  timeToFill: ({ duration }, say) =>
    `Von der ersten Packung an bleiben etwa ${say.duration(duration)}, bis der Kessel zum Füllen zu kalt ist.`,
  noToppingUp: ({ firstPack, lastPack }, say) =>
    `Nichts mehr in eine Packung nachgießen, sobald sich darauf eine Haut gebildet hat: vorhergesagt ${say.range(say.duration(Math.min(firstPack, lastPack)), say.duration(Math.max(firstPack, lastPack)))} nach ihrem Füllen.`,
  closeAtOnce: () => "Jede Packung gleich nach dem Füllen verschließen.",
  cooledTo: ({ temperature }, say) => `höchstens ${say.celsius(temperature)} warm ist`,
  centreAt: ({ temperature }, say) => `erstarrt ist: im Kern höchstens ${say.celsius(temperature)}`,
  trialPack: () => "im Kern erstarrt ist: eine Probepackung aufschneiden",
  afterFull: ({ duration }, say) => `${say.duration(duration)} nach dem Füllen`,
  restOf: ({ step }, say) => `Ende der Ruhe (${say.step(step)})`,
  timesNotKnown: ({ reasons: all }) =>
    `Einige dieser Zeiten sind nicht bekannt: ${all.join("; ")}. Jedes Mal aufschreiben, wann es getan wurde.`,
  leftInVessel: ({ name }) => `${name} (wiegen oder schätzen)`,
  leftBehind: () => "Im Kessel und im Abfüller geblieben",
  unaccounted: ({ tolerance }) =>
    `Nicht nachgewiesen: die eingewogene Masse abzüglich alles Gefundenen. Ist es nach oben oder unten mehr als ${tolerance} (alle Wägetoleranzen zusammen), vor der Freigabe den Verantwortlichen der Rezeptur verständigen.`,
  thickerFilm: ({ stated, predicted, mass }, say) =>
    `Der Film an der Wand ist wie angegeben geplant, ${say.millimetres(stated, 2)}; vorhergesagt sind ${say.millimetres(predicted, 2)}. Dann blieben ${say.kilograms(mass, 2)} mehr im Kessel, und so viel weniger würde abgefüllt.`,
  inPacks: ({ count }, say) => `In ${say.count(count)} Packungen`,
};

export const packs: Lines["packs"] = {
  limitedBy: {
    nominal: "die Nennfüllmenge genügt",
    mean: "die Prüfung des Mittels bestimmt es",
    "single-packs": "die Prüfung einzelner Packungen bestimmt es",
    "shares-of-packs": "die angegebenen Anteile knapper Packungen bestimmen es",
  },
  states: ({ nominal, mass }, say) =>
    `${say.given(nominal.volume, (volume) => `Auf dem Etikett stehen ${say.litres(volume)}, das sind ${say.kilograms(mass)} bei ${say.celsius(20)}.`)}${say.given(nominal.mass, (own) => `Auf dem Etikett stehen ${say.kilograms(own)}.`)}`,
  mayBeShort: ({ mass, act, grade }, say) =>
    `Einer einzelnen Packung dürfen ${say.kilograms(mass, 3)} fehlen (${act}; Tabelle ${grades[grade] ?? grade}).`,
  aim: ({ mass, share, limit }, say) =>
    `Im Mittel ${say.kilograms(mass)} netto anstreben: ${limit}. Dann fallen ${say.percent(share, 2)} der Chargen durch die Prüfung.`,
  aimStated: ({ mass }, say) => `Im Mittel ${say.kilograms(mass)} netto anstreben, wie angegeben.`,
  aimByRules: ({ mass, share, limit }, say) =>
    `Die Regeln zur Füllmenge verlangen im Mittel ${say.kilograms(mass)} netto: ${limit}. Damit fallen ${say.percent(share, 2)} der Chargen durch die Prüfung.`,
  filler: ({ volume, temperature }, say) =>
    `Einen volumetrischen Abfüller zuerst auf ${say.range(say.litres(volume.min, 4), say.litres(volume.max, 4))} stellen (Produkt von ${say.range(say.celsius(temperature.min), say.celsius(temperature.max))}), dann durch Wiegen nachstellen.`,
  leaveAlone: ({ single, mean, count }, say) =>
    `Den Abfüller lassen, solange eine Packung brutto ${say.range(say.kilograms(single.min), say.kilograms(single.max))} wiegt und das Mittel von ${say.count(count)} Packungen ${say.range(say.kilograms(mean.min), say.kilograms(mean.max))}.`,
  headSpace: ({ temperature, share }, say) =>
    `Bei ${say.celsius(temperature)} lässt die größte Füllung ${say.range(say.percent(share.min, 2), say.percent(share.max, 2))} der Packung leer.`,
  overpressure: ({ pressure }, say) =>
    `Der Druck in einer dichten, starren Packung liegt dann ${say.range(say.millibars(pressure.min, 2), say.millibars(pressure.max, 2))} über der Außenluft.`,
  twoPours: ({ first, second }, say) =>
    `Warm passt es nicht auf einmal: ${say.kilograms(first)} gießen, und ${say.kilograms(second, 3)}, sobald das abgekühlt ist, bevor eine Haut erstarrt.`,
  packs: ({ count, massLeft }, say) =>
    `Alle Chargen zusammen füllen ${say.count(count)} Packungen, ${say.kilograms(massLeft, 3)} bleiben übrig.`,
  overfill: ({ massPerPack, mass }, say) =>
    `Jede Packung enthält ${say.kilograms(massPerPack, 2)} mehr, als auf dem Etikett steht, zusammen ${say.kilograms(mass, 3)}.`,
  overfillCost: ({ cost, currency }, say) => `Rohstoffe dieser Überfüllung kosten ${say.money(cost)} ${currency}.`,
  notKnown: ({ reason }) => `Nicht bekannt: ${reason}.`,
  formFor: ({ pack, formula }) => `${pack}, ${formula}`,
  takeSample: ({ count }, say) =>
    `${say.count(count)} Packungen hintereinander entnehmen, jede mit Verschluss wiegen und das Mittel aufschreiben. Den Abfüller nachstellen, wenn das Mittel oder eine einzelne Packung außerhalb dieser Grenzen liegt.`,
  sample: ({ number }, say) => say.count(number),
  singleLimits: ({ min, max }, say) =>
    `Eine einzelne Packung, brutto: ${say.range(say.kilograms(min), say.kilograms(max))}.`,
  meanLimits: ({ min, max }, say) =>
    `Das Mittel einer Probe, brutto: ${say.range(say.kilograms(min), say.kilograms(max))}.`,
};

const directions = { heating: "beim Erwärmen", cooling: "beim Abkühlen" } as const;

export const measure: Lines["measure"] = {
  ways: {
    measure: ({ figure }) => `Messen: ${figure}`,
    "look-up": ({ figure }) => `Nachschlagen: ${figure}`,
    decide: ({ figure }) => `Festlegen: ${figure}`,
  },
  figure: ({ name, material, owner, phases, directions: ways, dose }, say) => {
    const whose = say.given(material, (of) => ` von ${of}`) + say.given(owner, (of) => ` (${of})`);
    const charge = phases.length === 0 ? "" : ` von ${say.list(phases.map((phase) => `Phase ${phase}`))}`;
    const way = ways.length === 0 ? "" : ` ${say.list(ways.map((one) => directions[one]))}`;
    const share = say.given(
      dose,
      ({ min, max }) => ` bei ${say.range(say.percent(min, 3), say.percent(max, 3))} Gelbildner`,
    );
    return `${name}${whose}${charge}${way}${share}`;
  },
  alsoMissing: ({ figures }, say) =>
    `Einige dieser Prüfungen brauchen eine weitere Angabe. ${figures.map(({ name, checks }) => `${name} (Prüfungen: ${say.count(checks)})`).join("; ")}.`,
  waiting: ({ question, cases }) => {
    const told = cases.filter((one) => one !== "");
    return told.length === 0 ? question : `${question} (${told.join("; ")})`;
  },
  case: ({ subject, value, limit }) =>
    [subject, value === undefined ? "" : `jetzt ${value}`, limit ?? ""].filter((part) => part !== "").join(", "),
};
