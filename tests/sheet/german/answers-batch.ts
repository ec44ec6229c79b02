import type { Words } from "gelwright/sheet";
import { limit, material, notAbove, notBelow, numberBeside, value, valueAt, within, wordBeside } from "./forms.js";

/** Was eingewogen wird und ankommt, was in die Packung kommt, und die Stabilitätsprüfung. */
export const batchAnswers: Pick<
  Words["answers"],
  | "gel-former-ratio"
  | "natural-origin-claim"
  | "delivered"
  | "working-volume"
  | "maximum-share"
  | "stock-suffices"
  | "lot-fits-the-day"
  | "set-at-centre"
  | "fill-by-the-rules"
  | "fits-the-brim"
  | "pack-stands-the-heat"
  | "head-space-when-hot"
  | "whole-packs"
  | "samples-within-allowance"
  | "stored-below-transition"
> = {
  "gel-former-ratio": within({
    question: "Liegt das Verhältnis von Öl zu Gelbildner im Arbeitsbereich?",
    met: (answer, say) => `Das Verhältnis von Öl zu Gelbildner, ${value(answer, say)}, liegt im Arbeitsbereich.`,
    below: (answer, say) =>
      `Das Verhältnis von Öl zu Gelbildner, ${value(answer, say)}, liegt unter dem Arbeitsbereich: zu wenig Öl für den Gelbildner.`,
    above: (answer, say) =>
      `Das Verhältnis von Öl zu Gelbildner, ${value(answer, say)}, liegt über dem Arbeitsbereich: zu viel Öl für den Gelbildner.`,
    notKnown: () => "ob das Verhältnis von Öl zu Gelbildner im Arbeitsbereich liegt",
  }),
  "natural-origin-claim": notBelow({
    question: "Deckt der Anteil natürlichen Ursprungs die Auslobung?",
    met: (answer, say) => `Der Anteil natürlichen Ursprungs, ${value(answer, say)}, deckt die Auslobung.`,
    below: (answer, say) => `Der Anteil natürlichen Ursprungs, ${value(answer, say)}, deckt die Auslobung nicht.`,
    notKnown: () => "ob der Anteil natürlichen Ursprungs die Auslobung deckt",
  }),
  delivered: notBelow({
    question: "Liefert eine Charge, was verlangt ist?",
    met: (answer, say) => `Eine Charge liefert nach allen Verlusten ${value(answer, say)}; das genügt.`,
    below: (answer, say) => `Eine Charge liefert nach allen Verlusten nur ${value(answer, say)}: weniger als verlangt.`,
    notKnown: () => "ob eine Charge liefert, was verlangt ist",
    limit: (answer, say) =>
      `${limit(answer, say)}${say.given(numberBeside(answer, "packs"), (packs) => ` (${say.count(packs)} Packungen zu ${say.given(answer.limit.min?.value, (mass) => say.kilograms(mass / packs))})`)}`,
  }),
  "working-volume": within({
    question: "Passt eine Charge in das Nutzvolumen des Kessels?",
    met: () => "Eine Charge passt in das Nutzvolumen: sie bedeckt den Rührer und lässt Platz zum Rühren.",
    below: (answer, say) =>
      `Eine Charge von ${value(answer, say)} unterschreitet das kleinste Nutzvolumen des Kessels.`,
    above: (answer, say) =>
      `Der Ansatz füllt ${value(answer, say)} (${say.place(answer.at)}): mehr als das größte Nutzvolumen des Kessels.`,
    notKnown: () => "ob eine Charge in das Nutzvolumen des Kessels passt",
    value: valueAt,
  }),
  "maximum-share": notAbove({
    question: "Hält ein Rohstoff seinen Höchstanteil im Produkt ein?",
    met: (answer, say) => `Der Anteil von ${material(answer, say)} hält den Höchstanteil ein.`,
    above: (answer, say) =>
      `Der Anteil von ${material(answer, say)}, ${value(answer, say)}, liegt über dem Höchstanteil im Produkt.`,
    notKnown: (answer, say) => `ob der Anteil von ${material(answer, say)} den Höchstanteil einhält`,
  }),
  "stock-suffices": notAbove({
    question: "Ist von einem Rohstoff genug vorrätig?",
    met: (answer, say) => `Der Vorrat an ${material(answer, say)} reicht für alle Chargen.`,
    above: (answer, say) =>
      `Alle Chargen brauchen ${value(answer, say)} ${material(answer, say)}: mehr als vorrätig.${say.given(numberBeside(answer, "toBuy"), (mass) => ` Kaufen: ${say.kilograms(mass, 6)}.`)}`,
    notKnown: (answer, say) => `ob der Vorrat an ${material(answer, say)} reicht`,
  }),
  "lot-fits-the-day": notAbove({
    question: "Passt eine Charge in einen Arbeitstag?",
    met: (answer, say) => `Eine Charge dauert ${value(answer, say)} und passt in einen Arbeitstag.`,
    above: (answer, say) =>
      `Eine Charge dauert ${value(answer, say)} (bis zum Ende von ${say.step(answer.at.step)}): länger als ein Arbeitstag.`,
    notKnown: () => "ob eine Charge in einen Arbeitstag passt",
  }),
  "set-at-centre": notAbove({
    question: "Sind die Packungen im Kern erstarrt, wenn ihre Ruhezeit endet?",
    met: (answer, say) =>
      `Die Packungen sind ${value(answer, say)} nach dem Abfüllen im Kern erstarrt, vor dem Ende der Ruhezeit.`,
    above: (answer, say) =>
      `Die Packungen sind am Ende der Ruhezeit im Kern nicht erstarrt: es dauert ${value(answer, say)} nach dem Abfüllen (${say.place(answer.at)}).`,
    notKnown: () => "ob die Packungen im Kern erstarrt sind, wenn ihre Ruhezeit endet",
    value: valueAt,
    limit: (answer, say) => `Ruhezeit: ${say.interval(answer.limit.max, "duration")}`,
  }),
  "fill-by-the-rules": notBelow({
    question: "Genügt die angestrebte Füllmenge den Regeln zur Füllmenge?",
    met: (answer, say) =>
      `Bei der angestrebten Füllmenge, ${value(answer, say)}, fallen nach der Tabelle der Unterlagen nicht mehr Chargen durch die Prüfung als angegeben.`,
    below: (answer, say) =>
      `Bei der angestrebten Füllmenge, ${value(answer, say)}, fallen mehr Chargen durch die Prüfung als angegeben: ${limit(answer, say)} anstreben.`,
    notKnown: () => "ob die angestrebte Füllmenge den Regeln zur Füllmenge genügt",
  }),
  "fits-the-brim": notAbove({
    question: "Passt die Füllung warm in die Packung?",
    met: (answer, say) => `Die größte zu erwartende Füllung nimmt ${value(answer, say)} ein und passt in die Packung.`,
    above: (answer, say) =>
      `Die größte zu erwartende Füllung nimmt ${value(answer, say)} ein (${say.place(answer.at)}): mehr, als die Packung bis zum Rand fasst. Zweimal gießen oder kühler abfüllen.`,
    notKnown: () => "ob die Füllung warm in die Packung passt",
    value: valueAt,
  }),
  "pack-stands-the-heat": notAbove({
    question: "Hält die Packung die Wärme des Produkts beim Abfüllen aus?",
    met: (answer, say) => `Das Produkt wird mit ${value(answer, say)} abgefüllt; das hält die Packung aus.`,
    above: (answer, say) =>
      `Das Produkt wird mit ${value(answer, say)} abgefüllt (${say.place(answer.at)}), wärmer, als die Packung aushält: ${limit(answer, say)}. Kühler abfüllen oder eine andere Packung nehmen.`,
    notKnown: () => "ob die Packung die Wärme des Produkts beim Abfüllen aushält",
    value: valueAt,
  }),
  "head-space-when-hot": notBelow({
    question: "Bleibt in der Packung bei der wärmsten Lagerung ein Kopfraum?",
    met: (answer, say) => `Bei der wärmsten Lagerung bleiben ${value(answer, say)} der Packung als Kopfraum.`,
    below: (answer, say) =>
      `Bei der wärmsten Lagerung bleibt zu wenig Kopfraum${say.given(numberBeside(answer, "temperature"), (at) => ` (${say.celsius(at)})`)}: ${value(answer, say)} der Packung. Produkt, das eine geschlossene Packung ausfüllt, sprengt sie oder hebt den Verschluss.`,
    notKnown: () => "ob in der Packung bei der wärmsten Lagerung ein Kopfraum bleibt",
  }),
  "whole-packs": notBelow({
    question: "Füllt die Charge bei der angestrebten Füllmenge die verlangten Packungen?",
    met: (answer, say) => `Die Charge füllt ${value(answer, say)} Packungen.`,
    below: (answer, say) =>
      `Die Charge füllt nur ${value(answer, say)} Packungen${say.given(numberBeside(answer, "mass"), (mass) => ` zu ${say.kilograms(mass)}`)}, weil jede Packung mehr enthält, als auf dem Etikett steht. Eine größere Charge herstellen, gleichmäßiger abfüllen oder weniger Packungen hinnehmen.`,
    notKnown: () => "wie viele Packungen die Charge füllt",
  }),
  "samples-within-allowance": notAbove({
    question: "Reicht der Zuschlag für die Proben der Stabilitätsprüfung?",
    met: (answer, say) => `Die Proben der Stabilitätsprüfung, ${value(answer, say)}, liegen innerhalb ihres Zuschlags.`,
    above: (answer, say) =>
      `Die Stabilitätsprüfung braucht ${value(answer, say)}${say.given(numberBeside(answer, "samples"), (count) => ` (${say.count(count)} Proben)`)}, ihr Zuschlag ist ${limit(answer, say)}: den Zuschlag erhöhen oder kleinere Proben nehmen.`,
    notKnown: () => "ob der Zuschlag für die Proben der Stabilitätsprüfung reicht",
  }),
  "stored-below-transition": within({
    question: "Lässt jede Lagerung der Stabilitätsprüfung das Produkt in dem Zustand, in dem es benutzt wird?",
    met: () =>
      "Keine Lagerung kommt in die Nähe einer Temperatur, bei der das Produkt erstarrt, schmilzt oder klar wird.",
    below: (answer, say) =>
      `Bei ${value(answer, say)}${say.given(wordBeside(answer, "condition"), (name) => ` (${name})`)} ist das Produkt in einem anderen Zustand als bei der Anwendung: diese Lagerung sagt nichts über die übliche.`,
    above: (answer, say) =>
      `Bei ${value(answer, say)}${say.given(wordBeside(answer, "condition"), (name) => ` (${name})`)} erreicht das Produkt eine Temperatur, bei der es erstarrt, schmilzt oder klar wird: diese Lagerung sagt nichts über die übliche.`,
    notKnown: () =>
      "ob eine Lagerung in die Nähe einer Temperatur kommt, bei der das Produkt erstarrt, schmilzt oder klar wird",
  }),
};
