import type { Answer } from "gelwright/plan";
import type { Say, Words } from "gelwright/sheet";
import {
  limit,
  material,
  notAbove,
  notBelow,
  numberBeside,
  phase,
  step,
  value,
  valueAt,
  within,
  wordBeside,
} from "./forms.js";

function where({ of }: Answer, say: Say): string {
  return say.given(of.place, (place) => ` ${say.place({ place })}`);
}

function valueBeyond(answer: Answer, say: Say): string {
  return `${valueAt(answer, say)}${say.given(numberBeside(answer, "beyond"), (by) => `, ${say.kelvins(by)} über dem Erlaubten`)}`;
}

const works: Readonly<Record<string, string>> = { heating: "zum Heizen", cooling: "zum Abkühlen" };

function work(answer: Answer): string {
  return works[wordBeside(answer, "direction") ?? ""] ?? "zum Heizen oder Abkühlen";
}

function aboveSetting({ limit: { min }, margin }: Answer, say: Say): string {
  return `mindestens ${say.kelvins(margin?.min)} über der Erstarrungstemperatur (${say.interval(min, "temperature")})`;
}

function atDose(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "dose"), (dose) => ` bei einem Anteil von ${say.percent(dose)}`);
}

const strengths: Readonly<Record<string, string>> = { "yield stress": "Fließgrenze", modulus: "Modul" };

function measured(answer: Answer): string {
  return strengths[wordBeside(answer, "of") ?? ""] ?? "Festigkeit";
}

function dose(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "dose"), (share) => ` bei ${say.percent(share)} Gelbildner`);
}

function remedy(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "doseTarget"),
    (share) =>
      ` Für die gewünschte Festigkeit braucht es ${say.percent(share, 3)} Gelbildner (${say.percent(numberBeside(answer, "doseTargetMin"), 3)} bis ${say.percent(numberBeside(answer, "doseTargetMax"), 3)} zu 95 %).`,
  );
}

/** Was Wärme mit den Rohstoffen macht; lösen, erstarren und die Temperaturen der Schritte; die Festigkeit. */
export const heatAnswers: Pick<
  Words["answers"],
  | "heat-sensitive-off-the-heat"
  | "maximum-temperature"
  | "flash-point"
  | "done-in-time"
  | "step-can-be-done"
  | "gel-former-dissolves"
  | "above-setting"
  | "filled-before-it-sets"
  | "pours-into-the-pack"
  | "skin-on-the-wall"
  | "gel-strength"
> = {
  "heat-sensitive-off-the-heat": notAbove({
    question: "Wird ein wärmeempfindlicher Rohstoff erst nach dem Heizen zugegeben?",
    met: (answer, say) => `${material(answer, say)}, wärmeempfindlich, wird erst nach dem Heizen zugegeben.`,
    above: (answer, say) =>
      `${material(answer, say)}, wärmeempfindlich, ist in ${say.step(answer.at.step)} auf der Heizung: erst zugeben, wenn der Kessel von der Heizung ist.`,
    notKnown: (answer, say) => `ob ${material(answer, say)}, wärmeempfindlich, erst nach dem Heizen zugegeben wird`,
    value: ({ states }, say) => `Schritte auf der Heizung: ${say.count(states.notMet)}`,
    limit: () => "Schritte auf der Heizung: 0",
  }),
  "maximum-temperature": notAbove({
    question: "Bleibt ein Rohstoff unter seiner Höchsttemperatur?",
    met: (answer, say) => `${material(answer, say)} bleibt unter der Höchsttemperatur.`,
    above: (answer, say) =>
      `${material(answer, say)} wird wärmer als die Höchsttemperatur (${say.place(answer.at)}: ${value(answer, say)}). Weniger heizen oder später zugeben.`,
    notKnown: (answer, say) => `ob ${material(answer, say)} unter der Höchsttemperatur bleibt`,
    value: valueBeyond,
  }),
  "flash-point": notAbove({
    question: "Bleibt ein Rohstoff weit genug unter seinem Flammpunkt?",
    met: (answer, say) =>
      `${material(answer, say)} bleibt mindestens ${say.kelvins(answer.margin?.max)} unter dem Flammpunkt${where(answer, say)}.`,
    above: (answer, say) =>
      `${material(answer, say)} kommt dem Flammpunkt zu nahe${where(answer, say)} (${say.step(answer.at.step)}: ${value(answer, say)}). Weniger heizen oder später zugeben.`,
    notKnown: (answer, say) =>
      `ob ${material(answer, say)} mindestens ${say.kelvins(answer.margin?.max)} unter dem Flammpunkt bleibt${where(answer, say)}`,
    value: valueBeyond,
    limit: ({ limit: { max }, margin }, say) =>
      `mindestens ${say.kelvins(margin?.max)} unter dem Flammpunkt (${say.interval(max, "temperature")})`,
  }),
  "done-in-time": notAbove({
    question: "Wird ein Schritt in der erlaubten Zeit fertig?",
    met: (answer, say) => `${step(answer, say)} wird in der erlaubten Zeit ${work(answer)} fertig.`,
    above: (answer, say) =>
      `${step(answer, say)} dauert ${value(answer, say)}: länger, als ${work(answer)} erlaubt ist.`,
    notKnown: (answer, say) => `ob ${step(answer, say)} in der erlaubten Zeit ${work(answer)} fertig wird`,
  }),
  "step-can-be-done": within({
    question: "Kann ein Schritt die verlangte Temperatur erreichen?",
    met: (answer, say) => `${step(answer, say)} erreicht die Temperatur.`,
    below: (answer, say) =>
      `${step(answer, say)} geht so nicht: die Heizung bringt den Ansatz nicht über ${value(answer, say)}.`,
    above: (answer, say) =>
      `${step(answer, say)} geht so nicht: der Ansatz kühlt nicht unter ${value(answer, say)} ab.`,
    notKnown: (answer, say) => `ob ${step(answer, say)} die Temperatur erreicht`,
  }),
  "gel-former-dissolves": notBelow({
    question: "Löst sich der Gelbildner?",
    met: (answer, say) =>
      `Der Ansatz wird wärmer als die Temperatur, bei der sich ${material(answer, say)} löst${atDose(answer, say)}.`,
    below: (answer, say) =>
      `Der Ansatz erreicht nicht die Temperatur, bei der sich ${material(answer, say)} löst${atDose(answer, say)} (erreicht: ${value(answer, say)}): Klumpen bleiben übrig.`,
    notKnown: (answer, say) => `ob sich ${material(answer, say)} löst`,
    value: valueAt,
    limit: (answer, say) => `Lösetemperatur: ${limit(answer, say)}`,
  }),
  "above-setting": notBelow({
    question: "Bleibt die Mischung nach einer Zugabe über ihrer Erstarrungstemperatur?",
    met: (answer, say) => `Nach der Zugabe von ${phase(answer)} ist die Mischung warm genug: ${value(answer, say)}.`,
    below: (answer, say) =>
      `Mit ${phase(answer)} kommt die Mischung der Erstarrungstemperatur zu nahe (${step(answer, say)}: ${value(answer, say)}). Die Phase anwärmen, die Schmelze heißer machen, oder in Teilen zugeben und dazwischen nachheizen.`,
    notKnown: (answer) => `ob die Mischung nach der Zugabe von ${phase(answer)} warm genug bleibt`,
    limit: aboveSetting,
  }),
  "filled-before-it-sets": notBelow({
    question: "Sind die Packungen voll, bevor das Gel erstarrt?",
    met: (answer, say) =>
      `Die Packungen sind voll, bevor das Gel erstarrt (${say.place(answer.at)}: ${value(answer, say)}).`,
    below: (answer, say) =>
      `Vor der letzten Packung kommt die Mischung der Erstarrungstemperatur zu nahe (${say.place(answer.at)}: ${value(answer, say)}). Schneller abfüllen oder den Kessel warm halten.`,
    notKnown: () => "ob die Packungen voll sind, bevor das Gel erstarrt",
    value: valueAt,
    limit: aboveSetting,
  }),
  "pours-into-the-pack": notAbove({
    question: "Läuft die Schmelze noch in die letzte Packung?",
    met: (answer, say) => `Die Schmelze läuft in jede Packung (${say.place(answer.at)}: ${value(answer, say)}).`,
    above: (answer, say) =>
      `Die Schmelze ist zu dick, um in die Packung zu laufen (${say.place(answer.at)}: ${value(answer, say)}). Schneller oder wärmer abfüllen.`,
    notKnown: () => "ob die Schmelze noch in die letzte Packung läuft",
    value: valueAt,
  }),
  "skin-on-the-wall": notBelow({
    question: "Bleibt die gekühlte Wand so warm, dass an ihr keine Haut erstarrt?",
    met: (answer, say) => `An der gekühlten Wand erstarrt in ${step(answer, say)} keine Haut.`,
    below: (answer, say) =>
      `An der gekühlten Wand erstarrt eine Haut (${step(answer, say)}: ${value(answer, say)}). Wärmeres Kühlmittel nehmen oder den Mantel früher abstellen.`,
    notKnown: (answer, say) => `ob an der gekühlten Wand in ${step(answer, say)} eine Haut erstarrt`,
    value: (answer, say) => `am Eintritt des Kühlmittels, am Ende des Schritts: ${value(answer, say)}`,
    limit: aboveSetting,
  }),
  "gel-strength": notBelow({
    question: "Gibt der Anteil an Gelbildner die gewünschte Festigkeit?",
    met: (answer, say) => `${measured(answer)}${dose(answer, say)}, ${value(answer, say)}: so hoch wie gewünscht.`,
    below: (answer, say) =>
      `${measured(answer)}${dose(answer, say)}, ${value(answer, say)}: niedriger als gewünscht.${remedy(answer, say)}`,
    notKnown: (answer, say) => `ob ${measured(answer)}${dose(answer, say)} so hoch wie gewünscht ausfällt`,
    value: (answer, say) => `${measured(answer)}: ${value(answer, say)}`,
  }),
};
