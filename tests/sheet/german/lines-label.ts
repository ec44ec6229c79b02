import type { Lines, Say } from "gelwright/sheet";
import { grades } from "./codes.js";

const shares = (min: number, max: number, say: Say, digits: number): string =>
  min === max ? say.percent(min, digits) : `${say.percent(min, digits)} bis ${say.percent(max, digits)}`;

export const label: Lines["label"] = {
  statuses: {
    restricted: "beschränkt",
    "restricted-later": "später beschränkt",
    "below-share": "unter dem beschränkten Anteil",
    "not-known": "nicht bekannt, ob es beschränkt ist",
  },
  claimed: {
    natural: "natürlich",
    naturalOrigin: "natürlichen Ursprungs",
    organic: "biologisch",
    organicOrigin: "biologischen Ursprungs",
  },
  kernelWords: {
    "whole product": "des ganzen Produkts",
    "without water": "des Produkts ohne Wasser",
    "without water and salt": "des Produkts ohne Wasser und Salz",
    "organic of product": "biologisch, vom Produkt",
    "organic of physically processed": "biologisch, von den physikalisch verarbeiteten Agrarrohstoffen",
    "organic of agro-ingredients": "biologisch, von allen Agrarrohstoffen",
    "natural origin of product": "natürlichen Ursprungs, vom Produkt",
    "petrochemical moieties of product": "petrochemische Molekülteile, vom Produkt",
    "other of product": "ohne Klasse, vom Produkt",
    met: "erfüllt",
    "not-met": "nicht erfüllt",
    "not-known": "nicht bekannt",
    "not-asked": "nichts von dieser Klasse darin",
    within: "eingehalten",
    above: "überschritten",
    "no-row": "die Tabelle hat dafür keine Zeile, was keine Erlaubnis ist",
  },
  for: ({ formula, type }) => `${formula} (${type})`,
  names: ({ names }) => names.join(", "),
  rule: ({ jurisdiction, date }) => `Nach der Regel von ${jurisdiction}, Stand ${date}.`,
  anyOrder: ({ names }, say) => `Untereinander in beliebiger Reihenfolge: ${say.list(names)}.`,
  withoutName: ({ material }) => `Für ${material} ist kein Etikettname angegeben; der Name des Rohstoffs steht dafür.`,
  toName: ({ name, share, sources }, say) => `${name}: zu nennen, ${say.percent(share, 3)} (aus ${say.list(sources)}).`,
  notAbove: ({ name, share }, say) => `${name}: nicht über der Schwelle, ${say.percent(share, 3)}.`,
  threshold: ({ threshold, jurisdiction, date }, say) =>
    `Genannt über ${say.percent(threshold, 3)}, nach der Liste von ${jurisdiction}, Stand ${date}.`,
  notStated: ({ names }, say) =>
    `Die allergenen Duftstoffe von ${say.list(names)} sind nicht angegeben: bis dahin können Namen fehlen.`,
  natureNotStated: ({ names }, say) => `Nicht angegeben ist, woraus ${say.list(names)} besteht.`,
  indexNotStated: ({ names }, say) => `Der Index von ${say.list(names)} ist nicht angegeben und zählt nicht.`,
  notInTable: ({ names }, say) => `Die Liste kennt ${say.list(names)} in dieser Schreibweise nicht.`,
  particles: ({ status, from, min, max }, say) =>
    `${shares(min, max, say, 3)}: ${status}${say.given(from, (day) => ` (die Beschränkung beginnt am ${day})`)}.`,
  claim: ({ percent, what, basis }, say) => `${say.number(percent, 6)} % ${what} ${basis}.`,
  figure: ({ what, min, max }, say) => `${what}: ${shares(min, max, say, 4)}.`,
  asked: ({ what, min, max, verdict }, say) =>
    `Verlangt, ${what}:${say.given(min, (low) => ` mindestens ${say.percent(low)}`)}${say.given(max, (high) => ` höchstens ${say.percent(high)}`)}: ${verdict}.`,
  shortfall: ({ name, share }, say) => `${name} nimmt ${say.percent(share, 3)} vom natürlichen Ursprung weg.`,
  notKnown: ({ what, reason }) => `${what}: nicht bekannt: ${reason}.`,
  daily: ({ type, grams, milligrams, edition, grade }, say) =>
    `${type}: ${say.number(grams, 4)} g/d, ${say.number(milligrams, 5)} mg/(kg·d) nach Körpergewicht (${edition}; Zeile ${grades[grade] ?? grade}).`,
  dose: ({ material, share, dose }, say) =>
    `${material}, ${say.percent(share)} des Produkts: ${say.number(dose, 3)} mg/(kg·d).`,
  margin: ({ margin }, say) => `Die Dosis der Studie ist ${say.number(margin, 3)}-mal so hoch.`,
  shareMax: ({ share }, say) => `Der gewünschte Abstand hält bis zu einem Anteil von ${say.percent(share, 3)}.`,
  limit: ({ name, share, max, status }, say) =>
    `${name}, ${say.percent(share, 3)}${say.given(max, (high) => ` (Grenze ${say.percent(high, 3)})`)}: ${status}.`,
};
