import type { Answer } from "gelwright/plan";
import type { Say, Words } from "gelwright/sheet";
import { limit, material, notAbove, notBelow, numberBeside, phase, step, value, within, wordBeside } from "./forms.js";

const packing = "Über 74 % Volumenanteil drücken gleich große Tröpfchen einander flach.";

function indices(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "gelFormer"),
    (gelFormer) =>
      `Gelbildner ${say.number(gelFormer, 5)}, Öl ${say.number(numberBeside(answer, "oil"), 5)} bei ${say.celsius(numberBeside(answer, "temperature"))}; `,
  );
}

function difference(answer: Answer, say: Say): string {
  return `${indices(answer, say)}Unterschied: ${value(answer, say)}`;
}

function remedy(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "massFractionToMatch"),
    (share) =>
      ` Ein Anteil von ${say.percent(share, 3)} Glycerin in Glycerin und Wasser würde passen, ± ${say.percent(numberBeside(answer, "tolerance"), 2)}; jetzt sind es ${say.percent(numberBeside(answer, "massFractionGlycerin"), 3)}.`,
  );
}

function additions(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "additions"),
    (count) =>
      ` (${say.count(count)} insgesamt, die erste ${say.kilograms(numberBeside(answer, "massFirst"))}, die größte ${say.kilograms(numberBeside(answer, "massMax"))})`,
  );
}

function asPlanned(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "planned"),
    (planned) => ` an den Enden der Wägetoleranzen (${say.percent(planned)} wie geplant)`,
  );
}

function named(answer: Answer, say: Say): string {
  return say.given(wordBeside(answer, "material"), (key) => ` (${say.material(key)})`);
}

function droplets(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "diameter"), (diameter) => ` von ${say.micrometres(diameter)}`);
}

function bubbles(answer: Answer, say: Say): string {
  return `Blasen${say.given(numberBeside(answer, "diameter"), (diameter) => ` von ${say.millimetres(diameter)}`)}`;
}

function held(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "suspendedMin"),
    (diameter) => ` Das erstarrte Gel hält Blasen bis ${say.millimetres(diameter, 2)}.`,
  );
}

function underPressure(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "pressure"), (pressure) => ` von ${say.millibars(pressure)} absolut`);
}

/** Öl, das als Tröpfchen in einen Gelbildner gerührt wird, und die Luft. */
export const emulsionAnswers: Pick<
  Words["answers"],
  | "gel-former-covers-impeller"
  | "maximum-oil-fraction"
  | "additions-within-share"
  | "surfactant-covers-droplets"
  | "clarity-match"
  | "clarity-while-warm"
  | "water-activity"
  | "air-leaves"
  | "air-is-released"
  | "air-has-time"
  | "vacuum-foam"
  | "vacuum-boils"
> = {
  "gel-former-covers-impeller": notBelow({
    question: "Bedeckt der Gelbildner allein den Rührer?",
    met: () => "Der Gelbildner bedeckt den Rührer, bevor das erste Öl hineinkommt.",
    below: (answer, say) =>
      `Der Gelbildner allein, ${value(answer, say)}, bedeckt den Rührer nicht: das erste Öl würde nicht eingerührt. Einen kleineren Kessel nehmen, oder in einem solchen beginnen und umfüllen.`,
    notKnown: () => "ob der Gelbildner allein den Rührer bedeckt",
  }),
  "maximum-oil-fraction": notAbove({
    question: "Bleibt der Ölanteil unter dem, bei dem die Emulsion umschlägt?",
    met: (answer, say) =>
      `Der Ölanteil, ${value(answer, say)} vom Volumen${asPlanned(answer, say)}, bleibt weit genug unter dem höchsten aus Versuchen. ${packing}`,
    above: (answer, say) =>
      `Der Ölanteil erreicht ${value(answer, say)} vom Volumen${asPlanned(answer, say)} in ${step(answer, say)} und damit nicht weit genug unter dem höchsten aus Versuchen: die Emulsion kann umschlagen. ${packing}`,
    notKnown: () => "ob der Ölanteil unter dem bleibt, bei dem die Emulsion umschlägt",
    limit: (answer, say) => `unter dem höchsten aus Versuchen: ${say.interval(answer.limit.max, "volume-fraction")}`,
  }),
  "additions-within-share": notAbove({
    question: "Ist jede Zugabe so klein, wie sie das Labor auf einmal einarbeiten konnte?",
    met: (answer, say) =>
      `Keine Zugabe von ${phase(answer)} ist größer, als das Labor auf einmal einarbeiten konnte${additions(answer, say)}.`,
    above: (answer, say) =>
      `Eine Zugabe von ${phase(answer)} ist zu groß (${say.place(answer.at)}): ${value(answer, say)} vom Kesselinhalt, mehr, als das Labor auf einmal einarbeiten konnte.`,
    notKnown: (answer) =>
      `ob jede Zugabe von ${phase(answer)} so klein ist, wie sie das Labor auf einmal einarbeiten konnte`,
    meanwhile: "Einen Strahl oder Portionen dieser Größe zuerst im Labor versuchen.",
    value: (answer, say) => `Anteil vom Kesselinhalt: ${value(answer, say)} (${say.place(answer.at)})`,
    limit: (answer, say) => `${limit(answer, say)} bei so viel Öl im Kessel`,
  }),
  "surfactant-covers-droplets": notBelow({
    question: "Reicht das Tensid, um die Tröpfchen zu bedecken?",
    met: (answer, say) =>
      `Das Tensid${named(answer, say)} reicht, um Tröpfchen${droplets(answer, say)} zu bedecken. Was sich löst oder Mizellen bildet, kommt noch dazu.`,
    below: (answer, say) =>
      `Das Tensid${named(answer, say)}, ${value(answer, say)}, reicht nicht, um Tröpfchen${droplets(answer, say)} zu bedecken: sie würden zusammenfließen.`,
    notKnown: () => "ob das Tensid reicht, um die Tröpfchen zu bedecken",
    limit: (answer, say) => `um Tröpfchen${droplets(answer, say)} zu bedecken: ${limit(answer, say)}`,
  }),
  "clarity-match": notAbove({
    question: "Haben Öl und Gelbildner bei Raumtemperatur die gleiche Brechzahl?",
    met: (answer, say) =>
      `Die Brechzahlen von Öl und Gelbildner passen bei Raumtemperatur: das Gel kann klar werden, sobald die Luft heraus ist.${remedy(answer, say)}`,
    above: (answer, say) =>
      `Die Brechzahlen von Öl und Gelbildner weichen bei Raumtemperatur ab: das Gel bleibt milchig.${remedy(answer, say)}`,
    notKnown: () => "ob das Gel klar wird",
    value: difference,
    limit: (answer, say) => `Unterschied: ${limit(answer, say)}`,
  }),
  "clarity-while-warm": within({
    question: "Sieht das Gel im Kessel so aus, wie es bei Raumtemperatur aussehen wird?",
    met: (answer, say) =>
      `Das Gel sieht im Kessel in ${step(answer, say)} so aus, wie es bei Raumtemperatur aussehen wird.`,
    below: (answer, say) =>
      `Vom Rühren warm, sieht das Gel im Kessel in ${step(answer, say)} klarer aus als bei Raumtemperatur: eine abgekühlte Probe beurteilen.`,
    above: (answer, say) =>
      `Vom Rühren warm, sieht das Gel im Kessel in ${step(answer, say)} milchiger aus als bei Raumtemperatur: eine abgekühlte Probe beurteilen.`,
    notKnown: (answer, say) =>
      `ob das Gel im Kessel in ${step(answer, say)} so aussieht, wie es bei Raumtemperatur aussehen wird`,
    value: difference,
    limit: (answer, say) => `Unterschied: ${limit(answer, say)}`,
  }),
  "water-activity": notAbove({
    question: "Liegt die Wasseraktivität unter 0,75?",
    met: (answer, say) =>
      `Die Wasseraktivität, ${value(answer, say)}, liegt unter der Grenze, unter der ein Produkt als mikrobiell wenig anfällig gilt. Geprüft werden muss es trotzdem.`,
    above: (answer, say) =>
      `Die Wasseraktivität, ${value(answer, say)}, liegt nicht unter der Grenze, unter der ein Produkt als mikrobiell wenig anfällig gilt.`,
    notKnown: () => "ob die Wasseraktivität unter 0,75 liegt",
    limit: (answer, say) => `unter ${say.interval(answer.limit.max, "activity")}`,
  }),
  "air-leaves": notBelow({
    question: "Steht die Schmelze lange genug dünn, damit die Luft entweicht?",
    met: (answer, say) =>
      `Luft, die ab ${say.step(numberBeside(answer, "fromStep"))} in der Schmelze ist, entweicht als ${bubbles(answer, say)} oder größer${say.given(numberBeside(answer, "durationToClear"), (time) => ` innerhalb von ${say.duration(time)}`)}. Danach keine Luft mehr einziehen.${held(answer, say)}`,
    below: (answer, say) =>
      `Die Schmelze steht nie lange genug dünn, damit ${bubbles(answer, say)} entweichen: Aufstieg ${value(answer, say)}. Stehen lassen, solange sie dünn ist, oder keine Luft einziehen.${held(answer, say)}`,
    notKnown: (answer, say) => `ob ${bubbles(answer, say)} aus der Schmelze entweichen`,
    value: (answer, say) => `Aufstieg: ${value(answer, say)}`,
    limit: (answer, say) => `Höhe der Schmelze: ${say.interval(answer.limit.min, "length")}`,
  }),
  "air-is-released": notBelow({
    question: "Gibt das Gel seine Blasen beim Entlüften frei?",
    met: (answer, say) => `Das Gel gibt seine Blasen in ${step(answer, say)} frei.`,
    below: (answer, say) =>
      `Das Gel hält in ${step(answer, say)} seine ${value(answer, say)} großen Blasen fest: langsam rühren, damit alles fließt, weniger Luft einziehen, oder ein stärkeres Vakuum anlegen.`,
    notKnown: (answer, say) => `ob das Gel in ${step(answer, say)} seine Blasen freigibt`,
    value: (answer, say) => `Blasendurchmesser: ${value(answer, say)}`,
    limit: (answer, say) =>
      answer.limit.min?.max === 0
        ? "keine Blase wird festgehalten"
        : `größer als die größte festgehaltene: ${say.interval(answer.limit.min, "length")}`,
  }),
  "air-has-time": notAbove({
    question: "Hat die Luft beim Entlüften Zeit zu entweichen?",
    met: (answer, say) => `Die Luft hat in ${step(answer, say)} Zeit zu entweichen: sie braucht ${value(answer, say)}.`,
    above: (answer, say) =>
      `Am Ende von ${step(answer, say)} ist die Luft nicht entwichen, sie braucht ${value(answer, say)}: mehr Zeit geben, ein stärkeres Vakuum anlegen, oder weniger Luft einziehen.`,
    notKnown: (answer, say) => `ob die Luft in ${step(answer, say)} Zeit hat zu entweichen`,
    value: (answer, say) =>
      `${value(answer, say)}${say.given(numberBeside(answer, "depth"), (depth) => ` aus ${say.millimetres(depth)} Tiefe`)}`,
  }),
  "vacuum-foam": notAbove({
    question: "Bleibt der Schaum unter Vakuum unter dem Rand?",
    met: (answer, say) => `Unter einem Vakuum${underPressure(answer, say)} bleibt der Schaum unter dem Rand.`,
    above: (answer, say) =>
      `Unter einem Vakuum${underPressure(answer, say)} steigt der Schaum nach ${phase(answer)} auf ${value(answer, say)}, über den Rand: langsamer oder weniger evakuieren.`,
    notKnown: (answer) => `ob der Schaum unter Vakuum nach ${phase(answer)} unter dem Rand bleibt`,
    limit: (answer, say) => `Höhe des Rands: ${say.interval(answer.limit.max, "length")}`,
  }),
  "vacuum-boils": notBelow({
    question: "Bleibt ein flüchtiger Rohstoff unter Vakuum unter seinem Siedepunkt?",
    met: (answer, say) => `Dieses Vakuum, ${value(answer, say)}, lässt ${material(answer, say)} nicht sieden.`,
    below: (answer, say) =>
      `Unter diesem Vakuum, ${value(answer, say)}, siedet ${material(answer, say)} heraus: weniger evakuieren oder vorher abkühlen.`,
    notKnown: (answer, say) => `ob ${material(answer, say)} unter Vakuum siedet`,
    value: (answer, say) =>
      `${value(answer, say)}${say.given(numberBeside(answer, "beyond"), (by) => `, ${say.interval({ min: by, max: by, value: by }, "pressure")} unter dem Erlaubten`)}`,
    limit: (answer, say) => `über dem Siededruck: ${say.interval(answer.limit.min, "pressure")}`,
  }),
};
