import type { Caution, NotKnown } from "gelwright/plan";
import type { Say, Words } from "gelwright/sheet";

function about({ materials = [] }: Caution, say: Say): string {
  return say.given(say.list(materials.map(say.material)) || undefined, (those) => `${those}: `);
}

export const cautions: Words["cautions"] = {
  "additions-not-hurried": () =>
    "Keine Zugabe übereilen. Zu viel Öl auf einmal bricht das Gel, und die Charge kann verloren sein.",
  "no-preservative": (caution, say) =>
    `${about(caution, say)}diese Rezeptur enthält Wasser und nennt kein Konservierungsmittel. Eine Wasseraktivität unter 0,75 senkt das Risiko, geprüft werden muss das Produkt trotzdem.`,
  vacuum: () =>
    "Nur einen dafür gebauten Kessel evakuieren. Dabei sieden flüchtige Stoffe, und Schaum steigt. Vor dem Öffnen belüften.",
  "water-kept-out": () =>
    "Kessel, Abfüller und Packungen trocken halten: ein Spritzer Wasser macht dieses Gel milchig. Abgespültes Öl macht Böden rutschig.",
  "hot-oil": ({ temperatureMax, temperatureLeftOn, flashPoint }, say) =>
    `Heißes Öl und heiße Schmelzen verbrennen die Haut und können sich entzünden.${say.given(temperatureMax, (hottest) => ` Dieser Ansatz erreicht ${say.celsius(hottest)}.`)} Den Ansatz weit unter dem Flammpunkt von allem halten, was darin ist${say.given(flashPoint, ({ material, temperature }) => ` (der niedrigste angegebene: ${say.celsius(temperature)}, ${say.material(material)})`)}, und die Heizung nie unbeaufsichtigt lassen${say.given(temperatureLeftOn, (steady) => `: bliebe sie an, brächte sie den Ansatz auf etwa ${say.celsius(steady, 0)}`)}. Wasser fernhalten. Schutz für Augen, Hände und Arme tragen.`,
  stirrer: () =>
    "Hände, Ärmel und Schaber fernhalten, solange sich der Rührer dreht. Vor jedem Hineingreifen abschalten und gegen Einschalten sichern.",
  dust: (caution, say) =>
    `${about(caution, say)}feiner Staub. Unter einer Absaugung einfüllen und eine Staubmaske tragen.`,
  "spray-inhaled": (caution, say) =>
    `${about(caution, say)}Partikel eines Sprays können eingeatmet werden. Eine befähigte Person muss entscheiden, ob es als Spray verkauft werden darf.`,
  sensitisers: (caution, say) =>
    `${about(caution, say)}kann die Haut sensibilisieren. Das Recht setzt Höchstgehalte und Kennzeichnung fest, je nach Ort verschieden.`,
  preservation: (caution, say) =>
    `${about(caution, say)}das Produkt enthält Wasser, seine Konservierung muss also im Belastungstest geprüft werden.`,
  restriction: (caution, say) => `${about(caution, say)}${say.given(caution.text, (text) => text)}`,
  "arithmetic-only": () =>
    "Diese Zahlen sind aus den angegebenen Messwerten gerechnet. Örtliche Vorschriften, Sicherheitsdatenblätter und befähigte Personen gehen vor.",
};

/** Eine Zahl, oder warum sie nicht bekannt ist. */
function orWhy<T>(figure: T | NotKnown | undefined, write: (known: T) => string, say: Say, words: Words): string {
  const reason = (figure as Partial<NotKnown> | undefined)?.notKnown;
  if (reason) return `${say.notKnown} (${words.reasons[reason.code](reason, say, words)})`;
  return say.given(figure as T | undefined, write) || say.notKnown;
}

export const notes: Words["notes"] = {
  "atomises-by-trial": (note, say) =>
    `Keine Zahl sagt voraus, ob das Gel zu einem Spray zerfällt, und wie fein. Ausprobieren.${say.given(note.yieldStress, (stress) => ` Fließgrenze: ${say.pascals(stress)}.`)}${say.given(note.ohnesorge, (number) => ` Ohnesorge-Zahl an der Düse: ${say.number(number, 2)}.`)}`,
  "bench-additions-beyond-shares": ({ addition, share, shareMax, count }, say) =>
    `Die Laboraufzeichnung widerspricht sich: Zugabe ${say.count(addition)} war ${say.percent(share, 2)} vom Gefäßinhalt, angegeben sind dort aber höchstens ${say.percent(shareMax, 2)} (Zugaben darüber: ${say.count(count)}). Klären, was stimmt.`,
  "loss-out-of-the-ordinary": ({ of, share, shareMax }, say) =>
    `Auf dem Weg in die Packungen geht mehr verloren als üblich${say.given(share, (lost) => `: ${say.percent(lost, 2)} des Eingewogenen`)}${say.given(shareMax, (usual) => ` (üblich: bis ${say.percent(usual, 2)})`)}.${say.given(of, (name) => ` Das meiste davon: ${name}.`)} Die Zuschläge prüfen oder den Kessel ausschaben.`,
  "film-of-the-set-gel": () =>
    "Der im Kessel bleibende Film ist für das erstarrte Gel gerechnet, weil der der Schmelze nicht bekannt ist. Seine Dicke angeben.",
  "viscosity-shifted": ({ phases, dose, temperatureDifference, temperatureReference }, say) =>
    `Nicht gemessen wurde die Viskosität${say.given(phases, (all) => ` von ${say.list(all.map((name) => `Phase ${name}`))}`)}${say.given(dose, (share) => ` bei ${say.percent(share)} Gelbildner`)}: wie verlangt, ist die Kurve einer Zusammensetzung, die bei ${say.celsius(temperatureReference)} erstarrt oder sich löst, um ${say.kelvins(temperatureDifference)} verschoben. Was darauf beruht, gilt erst nach einer Messung als erfüllt.`,
  "rinse-off": ({ filmThickness, untilMilky, untilFlowing, along }, say, words) => {
    const share = (water: number | null | undefined): string =>
      water === null ? "mehr, als verfolgt wurde" : say.percent(water, 2);
    const milky = orWhy(untilMilky, ({ min, max }) => `${share(min)} bis ${share(max)}`, say, words);
    const flows = orWhy(untilFlowing, ({ min, max }) => `${share(min)} bis ${share(max)}`, say, words);
    const wet = along && !("notKnown" in along) ? along.find(({ water }) => water >= 0.1) : undefined;
    return `Abspülen: ein Film${say.given(filmThickness, (thick) => ` von ${say.millimetres(thick, 2)}`)} wird bei so viel Wasser, bezogen auf die Masse des Gels, milchig: ${milky}. Von einer Wand fließt er durch sein Gewicht bei: ${flows}.${say.given(wet, (row) => ` Mit ${say.percent(row.water, 2)} Wasser weichen die Brechzahlen um ${say.number(Math.abs(row.mismatch), 2)} ab, und Öl macht ${say.percent(row.volumeFractionOil)} des Volumens aus.`)} Wie schnell das Wasser eindringt, ist nicht vorhergesagt.`;
  },
  "drawn-into-lines": ({ distance, thickness }, say, words) =>
    `Feine Linien: so weit kann das Gel aus seinem Film in eine Linie gezogen werden, die es benetzt: ${orWhy(distance, (metres) => say.millimetres(metres, 2), say, words)}.${say.given(thickness, (thick) => ` Ein Film bis ${say.millimetres(thick, 2)} läuft nicht.`)} Ein Gel, das an den Wänden gleitet, kommt weiter.`,
  "water-after-opening": ({ water, duration, mismatch }, say, words) =>
    `Geöffnet nimmt eine Packung in ${say.duration(duration)} so viel Wasser auf: ${orWhy(water, ({ min, max }) => `${say.kilograms(min, 2)} bis ${say.kilograms(max, 2)}`, say, words)}.${say.given(mismatch, ({ min, max }) => ` Die Brechzahlen von Öl und Gelbildner weichen dann um ${say.number(min, 2)} bis ${say.number(max, 2)} ab.`)} Das ist eine obere Schranke: im Tiegel muss sich das Wasser noch nach unten verteilen.`,
};
