import type { Change } from "gelwright/plan";
import type { Lines, Say } from "gelwright/sheet";

export const heat: Lines["heat"] = {
  inAdditions: ({ instruction, count }, say) => `${instruction} (${say.count(count)} Zugaben)`,
  inPacks: ({ mass }, say) => `${say.kilograms(mass)} in den Packungen`,
  viscosityAt: ({ viscosity, shearRate }, say) => `${say.pascalSeconds(viscosity, 2)} bei ${say.shearRate(shearRate)}`,
  viscosityBeyond: ({ viscosity, shearRate }, say) =>
    `${say.pascalSeconds(viscosity, 2)} bei ${say.shearRate(shearRate)}, jenseits der Messwerte`,
  stirring: ({ power, torque }, say) =>
    `der Rührer nimmt am Ende ${say.watts(power, 2)} und ${say.newtonMetres(torque)} auf`,
  fromTheRoom: ({ temperature }, say) =>
    `Zuerst alle Rohstoffe auf Raumtemperatur kommen lassen: alles kommt mit ${say.celsius(temperature)} hinein.`,
  sets: ({ duration }, say) =>
    `Sich selbst überlassen, erstarrt das Gel ${say.duration(duration)} nach der letzten Zugabe.`,
  setsAfterFilling: ({ duration, margin }, say) =>
    `Sich selbst überlassen, erstarrt das Gel ${say.duration(duration)} nach der letzten Zugabe, ${say.duration(margin)} nachdem die Packungen voll sind.`,
  setsBeforeFilling: ({ duration, margin }, say) =>
    `Sich selbst überlassen, erstarrt das Gel ${say.duration(duration)} nach der letzten Zugabe, ${say.duration(-margin)} bevor die Packungen voll sind.`,
  warmed: ({ temperature }, say) => `Durch das Rühren wird das Gel höchstens ${say.celsius(temperature)} warm.`,
  warmedNotKnown: ({ reason }) => `Wie warm das Gel durch das Rühren wird, ist nicht bekannt: ${reason}.`,
  heatLeftOut: ({ steps, reason }, say) =>
    `Die Rührwärme in ${say.list(steps.map(say.step))} ist nicht gerechnet: ${reason}.`,
  setThrough: ({ duration, basis }, say) =>
    `Der Kern einer Packung ist ${say.duration(duration)} nach dem Abfüllen unter der Erstarrungstemperatur: ${basis}.`,
  setThroughNotKnown: ({ reason }) => `Wann eine Packung durcherstarrt ist, ist nicht bekannt: ${reason}.`,
  skin: ({ firstPack, lastPack }, say) =>
    `Auf der ersten Packung ist ${say.duration(firstPack)} nach dem Füllen eine Haut erstarrt, auf der letzten ${say.duration(lastPack)} danach: dann nichts mehr nachgießen.`,
  cap: ({ temperature, firstPack, lastPack, allPacks, basis }, say) =>
    `Die Packungen verschließen, sobald sie auf ${say.celsius(temperature)} abgekühlt sind: die erste ${say.duration(firstPack)} nach ihrem Füllen, die letzte ${say.duration(lastPack)} danach, alle ${say.duration(allPacks)} nach dem Ende des Abfüllens (${basis}).`,
  capAtOnce: ({ temperature, basis }, say) =>
    `Die Packungen dürfen gleich nach dem Füllen verschlossen werden: das Produkt ist nicht wärmer als ${say.celsius(temperature)} (${basis}).`,
  capNotKnown: ({ reason }) => `Wann die Packungen zu verschließen sind, ist nicht bekannt: ${reason}.`,
  move: ({ temperature, firstPack, lastPack, allPacks, basis }, say) =>
    `Keine Packung bewegen, bevor ihr Kern auf ${say.celsius(temperature)} abgekühlt ist: die erste ${say.duration(firstPack)} nach ihrem Füllen, die letzte ${say.duration(lastPack)} danach, alle ${say.duration(allPacks)} nach dem Ende des Abfüllens (${basis}).`,
  moveNotKnown: ({ reason }) => `Wann die Packungen bewegt werden dürfen, ist nicht bekannt: ${reason}.`,
  sinks: ({ depth, mass }, say) =>
    `Der Inhalt sinkt beim Abkühlen um ${say.millimetres(depth, 2)}. Um das auszugleichen, wären je Packung ${say.kilograms(mass, 2)} mehr nötig; die Füllmenge zählt sie nicht mit.`,
  exposure: ({ material, temperatureMax, temperatureAbove, durationAbove, duration }, say) =>
    `${material}: höchstens ${say.celsius(temperatureMax)}; über ${say.celsius(temperatureAbove)} für ${say.duration(durationAbove)} von ${say.duration(duration)}.`,
  exposureAsMuchAs: ({ material, temperatureMax, temperatureAbove, durationAbove, duration, asMuch }, say) =>
    `${material}: höchstens ${say.celsius(temperatureMax)}; über ${say.celsius(temperatureAbove)} für ${say.duration(durationAbove)} von ${say.duration(duration)}; ${asMuch}.`,
  asMuchAs: ({ duration, temperature }, say) =>
    `es altert so stark wie in ${say.duration(duration)} bei ${say.celsius(temperature)}`,
  materialNotKnown: ({ material, reason }) => `${material}: nicht bekannt, denn ${reason}.`,
  oil: ({ material, oxidisability, share }, say) =>
    `${material} (Cox-Wert ${say.number(oxidisability, 2)}, ${say.percent(share, 3)} des Produkts)`,
  oilWithout: ({ oil }) => `${oil}: keine Fettsäure darin zählt zum Cox-Wert.`,
  oilOffHeat: ({ oil, heat: aged, share }, say) =>
    `${oil}: kommt nach dem Heizen hinein; ${aged}, ${say.percent(share, 2)} dessen, was die Wärme allen Ölen antut.`,
  oilOnHeat: ({ oil, heat: aged, share, offHeat }, say) =>
    `${oil}: kommt auf der Heizung hinein; ${aged}, ${say.percent(share, 2)} dessen, was die Wärme allen Ölen antut. Nach dem Heizen zugegeben: ${say.duration(offHeat)}.`,
  oilWouldSet: ({ oil, heat: aged, share, offHeat }, say) =>
    `${oil}: kommt auf der Heizung hinein; ${aged}, ${say.percent(share, 2)} dessen, was die Wärme allen Ölen antut. Nach dem Heizen zugegeben: ${say.duration(offHeat)}, doch käme die Mischung der Erstarrungstemperatur zu nahe.`,
  lossNotStated: ({ material }) => `${material}: nichts zusätzlich eingewogen`,
  lossStated: ({ material, share }, say) => `${material}: ${say.percent(share)} zusätzlich eingewogen, wie angegeben`,
  lossPredicted: ({ loss, predicted, max, basis }, say) =>
    `${loss}; vorhergesagter Verlust ${say.percent(predicted, 2)}${max < 1 ? `, höchstens ${say.percent(max, 2)}` : ""}: ${basis}.`,
  lossNotPredicted: ({ loss, reason }) => `${loss}; der Verlust lässt sich nicht vorhersagen, denn ${reason}.`,
};

const two = (part: number): string => String(part).padStart(2, "0");

export const stability: Lines["stability"] = {
  transitions: { "gel-point": "Erstarren und Lösen" },
  date: ({ year, month, day }) => `${two(day)}.${two(month)}.${year}`,
  day: ({ day }, say) => say.count(day),
  takes: ({ samples, mass }, say) =>
    `${say.count(samples)} Proben zu ${say.kilograms(mass / samples, 3)} für die Stabilitätsprüfung zurückstellen, zusammen ${say.kilograms(mass, 3)}.`,
  takesNotKnown: ({ samples, reason }, say) =>
    `${say.count(samples)} Proben für die Stabilitätsprüfung zurückstellen; wie viel Produkt das ist, ist nicht bekannt: ${reason}.`,
  upTo: ({ day }, say) => `Die letzte Entnahme ist am Tag ${say.count(day)}.`,
  storage: ({ name, temperature }) => (temperature === "" || name === temperature ? name : `${name} (${temperature})`),
  standsFor: ({ min, value, max, temperature }, say) =>
    `${say.duration(value)} bei ${say.celsius(temperature)} (${say.duration(min)} bis ${say.duration(max)})`,
  standsForNotKnown: ({ reason }) => `nicht bekannt: ${reason}`,
  stay: ({ temperature, duration }, say) => `${say.duration(duration)} bei ${say.celsius(temperature)}`,
  cycles: ({ count, samples, duration, stays }, say) =>
    `${say.count(count)} Wechsel aus ${say.list(stays)}, zusammen ${say.duration(duration)}. Proben, die sie durchlaufen: ${say.count(samples)}.`,
  crossing: ({ name, count }, say) => `Durchgänge durch eine Zustandsänderung (${name}): ${say.count(count)}.`,
  none: "Keine Stabilitätsprüfung angegeben.",
};

export const figures: Lines["figures"] = {
  courseOfTemperature: ({ hasWindows }) =>
    `Vorhergesagte Temperatur des Ansatzes; die Ziffern oben sind die Schritte.${hasWindows ? " Schraffiert: wann und wie warm Partikel hineindürfen." : ""}`,
  setting: () => "erstarrt",
  courseOfOil: ({ phase }) => `Öl im Kessel während der Zugabe von Phase ${phase}.`,
  courseOfTorque: ({ phase }) =>
    `Vorhergesagtes Drehmoment an der Welle während der Zugabe von Phase ${phase}. Schraffiert: sein Band.`,
};

export const scales: Lines["scales"] = {
  heads: {
    mass: "Ansatz einer Charge",
    shareTaken: "Verlust des Verfahrens",
    dose: "Gelbildner im Produkt",
    costPerKilogram: "Rohstoffe je geliefertem Kilogramm",
    surfaceToVolume: "Oberfläche zu Volumen",
    durationHeating: "Heizen",
    durationCooling: "Abkühlen",
    durationCoolingByRule: "Abkühlen, nach der Kubikwurzelregel vom ersten",
    durationToSet: "von der letzten Zugabe bis zum Erstarren",
    durationMargin: "übrig, wenn die Packungen voll sind",
    additions: "Ölzugaben",
    massFirstAddition: "erste Zugabe",
    volumeFractionOil: "Öl vom Volumen am Ende",
    durationAdding: "bis alles eingearbeitet ist",
    temperatureMax: "am wärmsten durch Rühren",
    tipSpeed: "Umfangsgeschwindigkeit, wo der Rührer am schwersten arbeitet",
    shearRate: "mittlere Scherrate dort",
    power: "Leistung dort",
    torque: "Drehmoment dort",
  },
  setsBefore: ({ duration }, say) => `keine: es erstarrt ${say.duration(duration)} vorher`,
  windowOf: ({ material }) => `Zugabe: ${material}`,
  window: ({ temperatureMax, temperatureMin }, say) =>
    temperatureMin > temperatureMax
      ? "bei keiner Temperatur"
      : `${say.celsius(temperatureMax)} hinunter bis ${say.celsius(temperatureMin)}`,
  notAsked: () => "nicht gefragt",
  field: ({ path }) => `angegeben: ${path}`,
  notStated: () => "nicht angegeben",
  stream: () => "keine, ein Strahl",
};

function figureOfStep({ field, value }: Extract<Change, { readonly change: "step" }>, say: Say): string {
  if (field === "to" || field === "at") return say.celsius(value);
  if (field === "for" || field === "within") return say.duration(value);
  if (field === "speed") return say.rpm(value);
  return field === "pressure" ? say.millibars(value) : say.pascalSeconds(value);
}

export const sweep: Lines["sweep"] = {
  heads: {
    lots: "Chargen",
    mass: "Ansatz einer Charge",
    massDelivered: "von einer Charge geliefert",
    durationUntilFilled: "bis die letzte Packung voll ist",
  },
  impossible: () => "nichts einzuwiegen",
  cell: ({ verdict, value }) => (value === "" ? verdict : `${verdict}, ${value}`),
  flip: ({ question, before, after, from, to, change }) =>
    `${question} ${before} (${from}), ${after} (${to})${change === "" ? "" : `; das Urteil wechselt bei ${change}`}.`,
  change: (change, say) => {
    switch (change.change) {
      case "room":
        return `${say.celsius(change.value)} im Raum`;
      case "coolant":
        return `${say.celsius(change.value)} des Kühlmittels`;
      case "heater":
        return `${say.watts(change.value)} der Heizung`;
      case "delivered":
        return `${say.kilograms(change.value)} verlangt`;
      case "dose":
        return `${say.percent(change.value)} ${say.material(change.material)}`;
      case "step":
        return `${figureOfStep(change, say)} in ${say.step(change.step)}`;
      case "material":
        return `${change.field === "temperatureFlash" || change.field === "temperatureMax" ? say.celsius(change.value) : say.percent(change.value)} für ${say.material(change.material)}`;
      default:
        return say.number((change as { readonly value: number }).value);
    }
  },
};
