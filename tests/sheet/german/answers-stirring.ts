import type { Answer } from "gelwright/plan";
import type { Say, Words } from "gelwright/sheet";
import { material, notAbove, notBelow, numberBeside, step, value, valueAt, within } from "./forms.js";

function reynolds(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "reynolds"), (number) => `, Re ${say.number(number, 2)}`);
}

function atSpeed(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "speed"), (speed) => ` bei ${say.rpm(speed)}`);
}

function tooFar(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "massFractionBeyond"),
    (share) => `, ${say.percent(share, 2)} der Masse weiter als erlaubt`,
  );
}

/** Was der Rührer bewegt, was sein Motor kann, und ob Partikel oben bleiben. */
export const stirringAnswers: Pick<
  Words["answers"],
  | "blended"
  | "gel-moves-at-wall"
  | "gel-moves-at-surface"
  | "motor-power"
  | "motor-torque"
  | "stirrer-covered"
  | "minimum-volume"
  | "no-air-down-the-vortex"
  | "particles-go-in"
  | "particles-settle"
  | "particles-stay-suspended"
> = {
  blended: notAbove({
    question: "Wird ein Ansatz lange genug gerührt, um gleichmäßig zu sein?",
    met: (answer, say) => `Am Ende von ${step(answer, say)} ist das Zugegebene gleichmäßig verteilt.`,
    above: (answer, say) =>
      `${step(answer, say)} ist für eine gleichmäßige Mischung zu kurz: das Mischen dauert ${value(answer, say)}.`,
    notKnown: (answer, say) => `ob der Ansatz nach ${step(answer, say)} gleichmäßig ist`,
    value: (answer, say) => `Mischzeit: ${value(answer, say)}${reynolds(answer, say)}`,
    limit: (answer, say) => `Rührzeit: ${say.interval(answer.limit.max, "duration")}`,
  }),
  "gel-moves-at-wall": notBelow({
    question: "Bewegt sich das Gel an der Wand?",
    met: (answer, say) => `Das Gel bewegt sich in ${step(answer, say)} bis an die Wand.`,
    below: (answer, say) =>
      `Das Gel an der Wand steht still (${say.place(answer.at)}): der Rührer bewegt ${value(answer, say)} vom Durchmesser. Gel an der Wand wird nicht gemischt und behält seine Luft. Schneller rühren, einen breiteren oder wandgängigen Rührer nehmen, oder bei stehendem Rührer die Wand von Hand abschaben.`,
    notKnown: (answer, say) => `ob sich das Gel in ${step(answer, say)} bis an die Wand bewegt`,
    value: (answer, say) =>
      answer.verdict === "met" ? "alles bewegt sich" : `bewegter Durchmesser: ${valueAt(answer, say)}`,
    limit: (answer, say) => `Durchmesser des Kessels: ${say.interval(answer.limit.min, "length")}`,
  }),
  "gel-moves-at-surface": notBelow({
    question: "Bewegt sich das Gel bis zur Oberfläche?",
    met: (answer, say) => `Das Gel bewegt sich in ${step(answer, say)} bis zur Oberfläche.`,
    below: (answer, say) =>
      `Das Gel nahe der Oberfläche steht still (${say.place(answer.at)}): der Rührer bewegt ${value(answer, say)} von der Höhe. Was oben liegt, wird nicht eingemischt. Schneller rühren, den Rührer höher setzen, oder das Gel bei stehendem Rührer von Hand wenden.`,
    notKnown: (answer, say) => `ob sich das Gel in ${step(answer, say)} bis zur Oberfläche bewegt`,
    value: (answer, say) => (answer.verdict === "met" ? "alles bewegt sich" : `bewegte Höhe: ${valueAt(answer, say)}`),
    limit: (answer, say) => `Füllstand: ${say.interval(answer.limit.min, "length")}`,
  }),
  "motor-power": notAbove({
    question: "Hat der Motor genug Leistung?",
    met: (answer, say) =>
      `Der Motor hat in jedem Schritt genug Leistung. Höchster Bedarf: ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}).`,
    above: (answer, say) =>
      `Der Motor hat zu wenig Leistung: der Rührer braucht ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}). Langsamer rühren.`,
    notKnown: (answer, say) => `ob der Motor genug Leistung hat (${say.place(answer.at)})`,
    value: valueAt,
    limit: (answer, say) =>
      `Motorleistung: ${say.interval(answer.limit.max, "power")}${say.given(answer.margin?.max || undefined, (reserve) => `, abzüglich einer Reserve von ${say.watts(reserve)}`)}`,
  }),
  "motor-torque": notAbove({
    question: "Hat der Motor genug Drehmoment?",
    met: (answer, say) =>
      `Der Motor hat in jedem Schritt genug Drehmoment. Höchster Bedarf: ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}).`,
    above: (answer, say) =>
      `Der Motor hat zu wenig Drehmoment: der Rührer braucht ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}). Langsamer rühren oder ein Getriebe einsetzen.`,
    notKnown: (answer, say) => `ob der Motor genug Drehmoment hat (${say.place(answer.at)})`,
    value: valueAt,
    limit: (answer, say) =>
      `Motordrehmoment abzüglich einer Reserve von einem Fünftel: ${say.interval(answer.limit.max, "torque")}`,
  }),
  "stirrer-covered": notBelow({
    question: "Bedeckt der Ansatz den Rührer, wo immer er sich dreht?",
    met: () => "Der Ansatz bedeckt den Rührer in jedem Schritt, in dem er sich dreht.",
    below: (answer, say) =>
      `Der Ansatz bedeckt den Rührer nicht (${say.place(answer.at)}): er steht ${value(answer, say)} hoch, und der Rührer schlägt Luft ein. Von Hand rühren, bis mehr darin ist, oder den Rührer tiefer setzen.`,
    notKnown: (answer, say) => `ob der Ansatz den Rührer bedeckt (${say.place(answer.at)})`,
    value: (answer, say) => `Füllstand: ${valueAt(answer, say)}`,
  }),
  "minimum-volume": notBelow({
    question: "Bedeckt das angegebene kleinste Nutzvolumen den Rührer?",
    met: () => "Das angegebene kleinste Nutzvolumen bedeckt den Rührer.",
    below: (answer, say) =>
      `Das angegebene kleinste Nutzvolumen, ${value(answer, say)}, bedeckt den Rührer nicht: mehr einfüllen, den Rührer tiefer setzen, oder ein größeres Volumen angeben.`,
    notKnown: () => "ob das angegebene kleinste Nutzvolumen den Rührer bedeckt",
  }),
  "no-air-down-the-vortex": notAbove({
    question: "Bleibt die Trombe über dem Rührer?",
    met: () => "Keine Trombe reicht bis zum Rührer. Untergerührte oder eingegossene Luft ist nicht betrachtet.",
    above: (answer, say) =>
      `Die Trombe reicht bis zum Rührer (${say.place(answer.at)}) und zieht Luft ein: langsamer rühren.`,
    notKnown: (answer, say) => `ob eine Trombe Luft bis zum Rührer zieht (${say.place(answer.at)})`,
    meanwhile: "Die Oberfläche beobachten und langsamer rühren, wenn sie einsinkt.",
    value: (answer, say) => `Tiefe der Trombe: ${valueAt(answer, say)}${reynolds(answer, say)}`,
    limit: ({ limit: { max } }, say) =>
      `Ansatz über dem Rührer: ${max?.min === 0 && max.max === null ? say.notKnown : say.interval(max, "length")}`,
  }),
  "particles-go-in": within({
    question: "Kommen die Partikel hinein, wenn das Gel dick genug zum Tragen und dünn genug zum Rühren ist?",
    met: (answer, say) =>
      `${material(answer, say)} kommt hinein, wenn das Gel dick genug zum Tragen und dünn genug zum Rühren ist.`,
    below: (answer, say) =>
      `${material(answer, say)} kommt zu spät hinein (${step(answer, say)}: ${value(answer, say)}). Das Gel ist zu dick zum Einrühren.`,
    above: (answer, say) =>
      `${material(answer, say)} kommt zu früh hinein (${step(answer, say)}: ${value(answer, say)}). Es würde sinken, bevor das Gel erstarrt: weiter abkühlen lassen.`,
    none: ({ limit: { min, max }, of }, say) =>
      `Keine Temperatur passt für ${say.material(of.material)}: über ${say.interval(max, "temperature")} ist das Gel zu dünn zum Tragen, unter ${say.interval(min, "temperature")} zu dick zum Einrühren.`,
    notKnown: (answer, say) => `wann ${material(answer, say)} hineindarf`,
    value: (answer, say) => `vor der Zugabe: ${value(answer, say)}`,
    limit: ({ limit: { min, max } }, say) =>
      `zum Tragen: ${say.limitMax(max, "temperature")}; zum Einrühren: ${say.limitMin(min, "temperature")}`,
  }),
  "particles-settle": notAbove({
    question: "Sinken die Partikel nicht weiter als erlaubt, bevor das Gel erstarrt?",
    met: (answer, say) => `${material(answer, say)} sinkt nicht weiter als erlaubt, bevor das Gel erstarrt.`,
    above: (answer, say) =>
      `${material(answer, say)} sinkt zu weit, bevor das Gel erstarrt, ${value(answer, say)} in Kessel und Packung zusammen${tooFar(answer, say)}: kühler zugeben, früher abfüllen oder weiterrühren.`,
    notKnown: (answer, say) => `wie weit ${material(answer, say)} sinkt`,
    value: (answer, say) => `in Kessel und Packung zusammen: ${valueAt(answer, say)}${tooFar(answer, say)}`,
  }),
  "particles-stay-suspended": notBelow({
    question: "Ist das erstarrte Gel fest genug, um Partikel in Ruhe zu halten?",
    met: (answer, say) =>
      `Das erstarrte Gel ist fest genug, um ${material(answer, say)} in Ruhe zu halten, solange es sich nicht verändert.`,
    below: (answer, say) =>
      `Das erstarrte Gel ist zu schwach, um ${material(answer, say)} zu halten: es wird bei der Lagerung sinken.`,
    notKnown: (answer, say) => `ob das erstarrte Gel ${material(answer, say)} hält`,
    value: (answer, say) => `Fließgrenze: ${value(answer, say)}`,
  }),
};
