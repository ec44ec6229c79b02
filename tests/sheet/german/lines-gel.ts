import type { Lines } from "gelwright/sheet";

export const gel: Lines["gel"] = {
  heldDimensions: { diameter: "Durchmesser", thickness: "Dicke" },
  gelPointKinds: { sets: "erstarrt es", dissolves: "löst es sich" },
  gelPointWays: {
    measured: "bei diesem Anteil",
    between: "zwischen Anteilen, auf der Geraden nach Eldridge und Ferry",
    ideal: "aus seiner Schmelzwärme",
  },
  strengthKinds: { "yield stress": "Fließgrenze", modulus: "Modul" },
  models: {
    newton: "Newton",
    "power-law": "Potenzgesetz",
    bingham: "Bingham",
    casson: "Casson",
    "herschel-bulkley": "Herschel und Bulkley",
    carreau: "Carreau",
    "carreau-yasuda": "Carreau und Yasuda",
  },
  conventions: {
    "herschel-bulkley": "Achsenabschnitt nach Herschel und Bulkley",
    bingham: "Achsenabschnitt nach Bingham",
    casson: "Achsenabschnitt nach Casson",
    "casson-regression": "Gerade nach Casson durch die Wurzeln",
    "lowest-rate": "Spannung bei der kleinsten gemessenen Rate",
    "viscosity-maximum": "Spannung bei der größten Viskosität",
  },
  parameters: {
    yieldStress: { name: "Fließgrenze", unit: " Pa" },
    plasticViscosity: { name: "plastische Viskosität", unit: " Pa·s" },
    viscosity: { name: "Viskosität", unit: " Pa·s" },
    consistency: { name: "Konsistenz", unit: " Pa·sⁿ" },
    flowIndex: { name: "Fließindex", unit: "" },
    viscosityZero: { name: "Ruheviskosität", unit: " Pa·s" },
    viscosityInfinite: { name: "Viskosität bei hoher Scherung", unit: " Pa·s" },
    timeConstant: { name: "Zeitkonstante", unit: " s" },
    transition: { name: "Übergang", unit: "" },
  },
  about: ({ material, sentences }) => `${material}: ${sentences.join(" ")}`,
  flake: ({ width, thickness, diameter }, say) =>
    `Plättchen, ${say.micrometres(width, 2)} breit und ${say.micrometres(thickness, 2)} dick (Volumen einer Kugel von ${say.micrometres(diameter, 2)}).`,
  windowPackNotKnown: ({ reason }) =>
    `Das obere Ende kann tiefer liegen: wie weit es in der Packung sinkt, ist nicht bekannt, denn ${reason}.`,
  windowNotKnown: ({ reason }) => `Wann es einzurühren ist, ist nicht bekannt, denn ${reason}.`,
  windowClosed: ({ temperatureMax, temperatureMin }, say) =>
    `Keine Temperatur passt: über ${say.celsius(temperatureMax)} ist die Schmelze zu dünn zum Tragen, unter ${say.celsius(temperatureMin)} zu dick zum Einrühren.`,
  window: ({ temperatureMax, temperatureMin }, say) =>
    `Zwischen ${say.celsius(temperatureMax)} und ${say.celsius(temperatureMin)} einrühren.`,
  windowTimes: ({ timeMin, timeMax }, say) =>
    `Das ist ${say.range(say.duration(timeMin), say.duration(timeMax))} nach dem Abstellen der Heizung.`,
  windowOpenBy: ({ field }) => `Das untere Ende kann höher liegen; nicht bekannt: ${field}.`,
  goesIn: ({ temperature }, say) => `Nach diesem Plan bei ${say.celsius(temperature)}.`,
  goesInAfter: ({ temperature, time }, say) =>
    `Nach diesem Plan bei ${say.celsius(temperature)}, ${say.duration(time)} nach dem Abstellen der Heizung.`,
  settles: ({ inVessel }, say) => `Die größten Partikel sinken im Kessel ${say.millimetres(inVessel, 2)}.`,
  settlesInBoth: ({ inVessel, inPack }, say) =>
    `Die größten Partikel sinken, bevor das Gel erstarrt, im Kessel ${say.millimetres(inVessel, 2)} und in einer Packung ${say.millimetres(inPack, 2)}.`,
  settlesFurther: ({ share }, say) => `Von der Masse sinken ${say.percent(share, 2)} weiter als erlaubt.`,
  held: ({ length, dimension }, say) =>
    `Das erstarrte Gel hält Partikel dieser Art bis ${say.millimetres(length, 2)} ${dimension}.`,
  wet: ({ mass }, say) => `Mit mindestens ${say.kilograms(mass, 3)} des für diese Charge eingewogenen Öls benetzen.`,
  wetAndThicken: ({ mass, factor }, say) =>
    `Mit mindestens ${say.kilograms(mass, 3)} des für diese Charge eingewogenen Öls benetzen. Nach der Ölzahl macht es die Schmelze ${say.number(factor)}-mal so dick.`,
  gelPoint: ({ what, temperature }, say) => `${what} bei ${say.celsius(temperature)}`,
  gelPointOnLine: ({ what, temperature, min, max }, say) =>
    `${what} bei ${say.celsius(temperature)} (${say.range(say.celsius(min), say.celsius(max))} zu 95 %)`,
  gelPoints: ({ dose, points, basis }, say) => `Mit ${say.percent(dose, 3)} Gelbildner ${say.list(points)}: ${basis}.`,
  yieldStress: ({ value, basis }, say) => `Fließgrenze ${say.pascals(value, 3)}: ${basis}.`,
  yieldStressBetween: ({ value, min, max, basis }, say) =>
    `Fließgrenze ${say.estimate({ value, min, max }, "stress", 3)} (95 %): ${basis}.`,
  yieldStressOfPoints: ({ value, convention }, say) =>
    `Fließkurve: Fließgrenze ${say.pascals(value, 3)} (${convention}).`,
  yieldStressBeside: ({ value, convention, min, max }, say) =>
    `Fließkurve: Fließgrenze ${say.pascals(value, 3)} (${convention}, andere Festlegungen ${say.range(say.pascals(min, 2), say.pascals(max, 2))}).`,
  expected: ({ kind, dose, value, min, max }, say) =>
    `Aus Versuchen vorhergesagt bei ${say.percent(dose, 3)} Gelbildner: ${kind} ${say.estimate({ value, min, max }, "stress", 3)} (95 %).`,
  expectedNotKnown: ({ kind, reason }) =>
    `Nicht bekannt ist, was nach dem Anteil zu erwarten ist (${kind}): ${reason}.`,
  doseForTarget: ({ target, value, min, max }, say) =>
    `Gelbildner für ${say.pascals(target, 3)}, aus Versuchen vorhergesagt: ${say.estimate({ value, min, max }, "mass-fraction", 3)} (95 %).`,
  doseNotKnown: ({ target, reason }, say) =>
    `Welcher Anteil ${say.pascals(target, 3)} gibt, ist nicht bekannt: ${reason}.`,
  flow: ({ temperature, model }, say) => `Fließen bei ${say.celsius(temperature)}: ${model} (± Standardfehler).`,
  flowNotKnown: ({ reason }) => `Wie es fließt, ist nicht bekannt: ${reason}.`,
  model: ({ model, parameters }) => `${model}: ${parameters.join(", ")}`,
  modelOfSeveral: ({ model, candidates, parameters }, say) =>
    `${model}, das beste von ${say.count(candidates)} nach AICc: ${parameters.join(", ")}`,
  parameter: ({ name, value, unit }, say) =>
    `${name} ${say.number(value.value)} ± ${say.number(value.standardError, 2)}${unit}`,
  nozzle: ({ pressureGradient }, say) =>
    `Die Düse der Packung braucht ${say.millibars(pressureGradient / 1000, 2)} je Millimeter ihrer Länge.`,
  filmThatStays: ({ thickness }, say) =>
    `In Ruhe läuft ein Film bis ${say.millimetres(thickness, 2)} an einer senkrechten Wand nicht herab.`,
  viscosityBeyond: ({ viscosity }, say) => `${say.pascalSeconds(viscosity, 2)}, jenseits der Messpunkte`,
};

export const air: Lines["air"] = {
  leaves: ({ diameter, fromStep, depth, duration }, say) =>
    `Nach ${say.step(fromStep)} verlassen Blasen von ${say.millimetres(diameter, 2)} die ${say.millimetres(depth, 2)} hohe Schmelze innerhalb von ${say.duration(duration)}, wenn keine weiteren eingerührt werden.`,
  stays: ({ diameter, fromStep, toStep, depth, distance }, say) =>
    `Nach ${say.step(fromStep)} steigen Blasen von ${say.millimetres(diameter, 2)} bis zum Ende von ${say.step(toStep)} ${say.millimetres(distance, 2)} von ${say.millimetres(depth, 2)}: sie entweichen nicht.`,
  riseNotKnown: ({ diameter, fromStep, reason }, say) =>
    `Wie weit Blasen von ${say.millimetres(diameter, 2)} nach ${say.step(fromStep)} steigen, ist nicht bekannt: ${reason}.`,
  inPack: ({ distance, depth }, say) =>
    `In einer Packung steigen sie ${say.millimetres(distance, 2)} von ${say.millimetres(depth, 2)}, bevor sie erstarrt ist.`,
  held: ({ min, max }, say) =>
    `Das erstarrte Gel hält Blasen bis ${say.millimetres(min, 2)} auf Dauer. Blasen über ${say.millimetres(max, 2)} entweichen; dazwischen ist es nicht bekannt.`,
  staysFrom: ({ step }, say) => `Ab ${say.step(step)} keine Luft mehr einziehen: sie würde nicht entweichen.`,
  toClear: ({ within, fromStep, ways }, say) =>
    `Damit die Luft innerhalb von ${say.duration(within)} nach ${say.step(fromStep)} entweicht, muss die Schmelze ${ways.join(", oder ")}.`,
  outOfReach: ({ within, fromStep }, say) =>
    `Weder Wärme noch Vakuum klärt die Schmelze innerhalb von ${say.duration(within)} nach ${say.step(fromStep)}.`,
  clearsByItself: ({ within, fromStep }, say) =>
    `Bleibt die Schmelze so warm wie nach ${say.step(fromStep)}, entweicht ihre Luft ohne Vakuum innerhalb von ${say.duration(within)}.`,
  keptWarm: ({ temperature }, say) => `auf ${say.celsius(temperature)} oder wärmer gehalten werden`,
  underPressure: ({ pressure }, say) => `unter ${say.millibars(pressure)} oder weniger stehen`,
  foam: ({ pressure, foam }, say) =>
    `Unter ${say.millibars(pressure)} steht der Schaum ${say.millimetres(foam, 2)} hoch.`,
  foamNotKnown: ({ pressure, reason }, say) =>
    `Wie hoch der Schaum unter ${say.millibars(pressure)} steht, ist nicht bekannt: ${reason}.`,
  clearUnderVacuum: ({ duration }, say) => `Unter dem Vakuum ist die Schmelze nach ${say.duration(duration)} klar.`,
  boils: ({ material, pressure }, say) => `${material} siedet zuerst, unter ${say.millibars(pressure)}.`,
};

export const emulsion: Lines["emulsion"] = {
  keeps: {
    time: " (für die Größe des Kessels ist nichts zugeschlagen)",
    revolutions: " (der Rührer macht so viele Umdrehungen wie im Labor)",
    "tip travel": " (die Spitze des Rührers legt so viel Weg zurück wie im Labor)",
    "energy per volume": " (jeder Liter nimmt so viel Energie auf wie im Labor)",
    strain: " (die gesamte Scherung ist die des Labors)",
  },
  speedsOf: {
    bench: "im Labor",
    plan: "in diesem Plan",
    "tip-speed": "gleiche Umfangsgeschwindigkeit",
    "shear-rate": "gleiche Scherrate",
    "power-per-volume": "gleiche Leistung je Volumen",
    reynolds: "gleiche Reynolds-Zahl",
    "blend-time": "gleiche Mischzeit",
    froude: "gleiche Froude-Zahl",
  },
  additionsOf: ({ phase, step }, say) => `Zugaben von Phase ${phase} (Schritt ${say.count(step)})`,
  asFor: ({ phase }) => `Wie unter Phase ${phase} beschrieben vorgehen.`,
  additionsOfStep: ({ step }, say) => `Zugaben (Schritt ${say.count(step)})`,
  pour: () => "Jede Zugabe in dünnem Strahl dort eingießen, wo der Rührer sie einzieht. Dann weiterrühren und warten.",
  pourNoFaster: ({ rate }, say) =>
    `Jede Zugabe in dünnem Strahl dort eingießen, wo der Rührer sie einzieht, nicht schneller als ${say.massRate(rate)}. Dann weiterrühren und warten.`,
  lookIn: ({ when }) =>
    `Bei jeder Zeile das Gel ansehen: es muss ${when} sein. Ist es das nicht, die Pumpe anhalten, weiterrühren und wieder nachsehen.`,
  tick: ({ when }) =>
    `Das Kästchen abhaken, wenn das Gel ${when} ist; erst dann die nächste Zugabe. Dauert das länger als geplant, warten. Nie mit einer größeren Zugabe aufholen.`,
  torque: ({ speed }, say) =>
    `Drehmoment: an der Welle${say.given(speed, (turns) => ` bei ${say.rpm(turns)}`)} am Ende jeder Zeile, ohne Reibung in Getriebe und Dichtung. Leistung und Strom des Antriebs gehen mit ihm auf und ab. Fallen sie, ohne dass das Drehmoment der Tabelle fällt, bricht vielleicht das Gel: nichts mehr zugeben und nachsehen.`,
  scaleAtStart: ({ phase }) => `Die Waage unter Phase ${phase} zeigt zu Beginn: ______________`,
  times: ({ kept }) =>
    `Zeiten dienen nur der Planung; entscheidend ist das Aussehen des Gels. Es sind die Zeiten des Labors${kept}.`,
  timesBy: ({ factor, kept }, say) =>
    `Zeiten dienen nur der Planung; entscheidend ist das Aussehen des Gels. Es sind die Zeiten des Labors, mal ${say.number(factor)}${kept}.`,
  timesAlong: ({ first, last, kept }, say) =>
    `Zeiten dienen nur der Planung; entscheidend ist das Aussehen des Gels. Es sind die Zeiten des Labors, anfangs mal ${say.number(first)} und am Ende mal ${say.number(last)}${kept}.`,
  timesNotKnown: ({ reason }) => `Zeiten sind nicht bekannt: ${reason}. Entscheidend ist das Aussehen des Gels.`,
  whatIsLeft: ({ mass }) => `der Rest, ${mass}`,
  oil: ({ fraction }, say) => `Öl: ${say.percent(fraction, 3)} des Volumens von Öl und Gelbildner.`,
  droplets: ({ diameter, basis }, say) => `Tröpfchen von ${say.micrometres(diameter, 2)}: ${basis}.`,
  yieldStressByTheory: ({ yieldStress }, say) =>
    `Fließgrenze, aus Tröpfchengröße und Grenzflächenspannung vorhergesagt: ${say.pascals(yieldStress, 2)} (Princen und Kiss).`,
  modulusByTheory: ({ modulus }, say) =>
    `Schubmodul, ebenso vorhergesagt: ${say.pascals(modulus, 2)} (Princen und Kiss).`,
  oilNotKnown: ({ reason }) => `Der Volumenanteil des Öls ist nicht bekannt: ${reason}.`,
  dropletsNotKnown: ({ reason }) => `Die Größe der Tröpfchen ist nicht bekannt: ${reason}.`,
  mismatchAt: ({ temperature, mismatch, max }, say) =>
    `Bei ${say.celsius(temperature)} weichen die Brechzahlen um ${say.number(Math.abs(mismatch), 3)} ab${say.given(max, (allowed) => `; das Labor erlaubt ${say.number(allowed, 3)}`)}.`,
  hazeAt: ({ temperature, path, min, max }, say) =>
    `Bei ${say.celsius(temperature)} werden über ${say.millimetres(path, 2)} Gel ${say.percent(min, 2)} bis ${say.percent(max, 2)} des Lichts gestreut (vorhergesagt, ohne Luft). Nur zum Vergleich von Gelen untereinander.`,
  correctWith: ({ add, mass, within, volumeFractionOil }, say) =>
    `Die Brechzahlen passen bei Raumtemperatur, wenn in den Gelbildner einer Charge ${say.kilograms(mass, 3)} mehr davon kommen: ${additives[add]}${say.given(within, ({ min, max }) => ` (mit ${say.kilograms(min, 3)} bis ${say.kilograms(max, 3)} bleibt es im Erlaubten des Labors)`)}. Öl macht dann ${say.percent(volumeFractionOil)} des Volumens aus; Wasseraktivität und Konservierung ändern sich mit.`,
  hlb: ({ required, surfactants }) =>
    `HLB-Wert: das Öl verlangt ${required}, die Tenside haben ${surfactants}. Nur ein Anhalt: in Glycerin gepackte Tröpfchen sind kein Öl in Wasser.`,
  allergen: ({ name, share }, say) => `${name} ${say.percent(share, 2)}`,
  allergens: ({ list }) => `Duftstoffallergene im Produkt: ${list}.`,
  allergensOfSome: ({ list, without }) => `Duftstoffallergene im Produkt: ${list}. Nicht angegeben für: ${without}.`,
  induction: ({ material, temperature, min, max }, say) =>
    `${material}: nach den Induktionszeiten hielte es im Dunkeln bei ${say.celsius(temperature)} ${say.duration(min)} bis ${say.duration(max)}, nach zwei Regeln, die so weit weg vom Versuch nicht gelten müssen.`,
  theoryNotKnown: ({ reason }) => `Fließgrenze und Schubmodul lassen sich nicht vorhersagen: ${reason}.`,
};

const additives = { glycerin: "Glycerin", water: "Wasser" } as const;
