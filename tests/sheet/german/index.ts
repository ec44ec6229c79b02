import type { Digits, Formats, Phrases, Words } from "gelwright/sheet";
import { batchAnswers } from "./answers-batch.js";
import { emulsionAnswers } from "./answers-emulsion.js";
import { heatAnswers } from "./answers-heat.js";
import { stirringAnswers } from "./answers-stirring.js";
import { assumptions, fields, practices, uses, verdicts } from "./codes.js";
import { labels } from "./labels.js";
import { lawNames, laws } from "./laws.js";
import { air, emulsion, gel } from "./lines-gel.js";
import { figures, heat, scales, stability, sweep } from "./lines-heat.js";
import { label } from "./lines-label.js";
import { batch, kettle, measure, packs } from "./lines-making.js";
import { cautions, notes } from "./notes.js";
import { bases, levers, reasons, sources } from "./reasons.js";
import { steps } from "./steps.js";

/** Every word of the sheet in German: a whole table, not a part of one, or it does not compile. */
export const german: Words = {
  answers: { ...batchAnswers, ...heatAnswers, ...stirringAnswers, ...emulsionAnswers },
  verdicts,
  reasons,
  fields,
  lawNames,
  laws,
  assumptions,
  cautions,
  notes,
  sources,
  levers,
  uses,
  bases,
  practices,
  steps,
  labels,
  lines: { batch, heat, gel, air, emulsion, packs, stability, kettle, figures, label, scales, measure, sweep },
};

export const germanPhrases: Phrases = {
  notKnown: "nicht bekannt",
  fromBelow: (amount) => `mindestens ${amount}`,
  fromAbove: (amount) => `höchstens ${amount}`,
  range: (min, max) => `${min} bis ${max}`,
  about: (value, min, max) => `${value} (${min} bis ${max})`,
  orMore: (amount) => `${amount}, vielleicht mehr`,
  orLess: (amount) => `${amount}, vielleicht weniger`,
  both: (one, other) => `${one} und ${other}`,
  list: (others, last) => `${others.join(", ")} und ${last}`,
  step: (number) => `Schritt ${number}`,
  addition: (number) => `Zugabe ${number}`,
  places: {
    charge: "im Ansatz",
    "heated-wall": "an der beheizten Wand",
    "cooled-wall": "an der gekühlten Wand",
    vessel: "im Kessel",
    pack: "in der Packung",
    "first-pack": "in der ersten Packung",
    "last-pack": "in der letzten Packung",
  },
  material: "der Rohstoff",
  wholeRun: "über den ganzen Ablauf",
  someStep: "der Schritt",
  days: "Tage",
  onDay: (time, day) => `${time} am Tag ${day}`,
};

/** Decimals with a comma and no mark between thousands, which a reader of English would take for the other. */
function commas(value: number, digits: Digits): string {
  return new Intl.NumberFormat("de", {
    useGrouping: false,
    ...("decimals" in digits
      ? { minimumFractionDigits: digits.decimals, maximumFractionDigits: digits.decimals }
      : { maximumSignificantDigits: digits.significant }),
  }).format(value);
}

/** Numbers as they are written in German, with degrees Fahrenheit for those who asked for them. */
export const germanFormats: Formats = {
  format: commas,
  phrases: germanPhrases,
  units: { temperature: "°F", temperatureDifference: "Δ°F" },
};
