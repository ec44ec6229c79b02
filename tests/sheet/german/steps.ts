import type { PlanStep, Step } from "gelwright/plan";
import type { Say, Words } from "gelwright/sheet";

function read<Do extends Step["do"]>({ step }: PlanStep, _kind: Do): Extract<Step, { readonly do: Do }> {
  return step as Extract<Step, { readonly do: Do }>;
}

function atSpeed({ speed }: PlanStep, say: Say): string {
  return say.given(speed, (turns) => ` bei ${say.rpm(turns)}`);
}

function stirring({ speed }: PlanStep, say: Say): string {
  return say.given(speed, (turns) => `, dabei mit ${say.rpm(turns)} rühren`);
}

function onJacket(medium: number | undefined, say: Say): string {
  return say.given(medium, (warm) => ` mit dem Mantel auf ${say.celsius(warm)}`);
}

function within(duration: number | undefined, say: Say): string {
  return say.given(duration, (time) => ` innerhalb von ${say.duration(time)}`);
}

function partOf({ part }: PlanStep, say: Say): string {
  return say.given(part, ({ number, count }) => `Teil ${say.count(number)} von ${say.count(count)} der `);
}

/** Die Anweisung an den Bediener, ohne die Bemerkung der Unterlagen. */
export const steps: Words["steps"] = {
  charge: (step, say) => {
    const { phase, at, for: duration, equalAdditions = 1 } = read(step, "charge");
    const temperature = say.given(at, (warm) => `mit ${say.celsius(warm)}`) || "bei Raumtemperatur";
    const into = step.massCharged === step.mass ? "Vorlegen" : "Einrühren";
    const each = say.given(step.massCharged, (mass) => ` zu ${say.kilograms(mass / equalAdditions)}`);
    const equally =
      equalAdditions === 1
        ? ""
        : ` in ${say.count(equalAdditions)} gleichen Zugaben${each}, jede vor der nächsten eingerührt`;
    const over = say.given(duration, (time) => ` über ${say.duration(time)}`);
    return `${into}: ${partOf(step, say)}Phase ${phase} (${say.kilograms(step.massCharged)}, ${temperature})${equally}${over}${atSpeed(step, say)}`;
  },
  heat: (step, say) => {
    const { to, within: time } = read(step, "heat");
    return `Mit voller Heizung auf ${say.celsius(to)} heizen${within(time, say)}${stirring(step, say)}`;
  },
  hold: (step, say) => {
    const { for: duration, at, jacketAt } = read(step, "hold");
    const where =
      say.given(at, (warm) => ` neben der Heizung bei ${say.celsius(warm)}`) ||
      onJacket(jacketAt, say) ||
      ` auf der Heizung${say.given(step.temperatureEnd, (warm) => `, zurückgedreht, um ${say.celsius(warm)} zu halten,`)}`;
    return `${say.duration(duration)}${where} halten${stirring(step, say)}`;
  },
  "take off the heat": () => "Den Kessel von der Heizung nehmen oder die Heizung abschalten",
  cool: (step, say) => {
    const cooling = read(step, "cool");
    const coolant = say.given(step.temperatureCoolant, (inlet) => ` mit Kühlmittel von ${say.celsius(inlet)}`);
    const how = cooling.with === "jacket" ? `Über den Mantel kühlen${coolant}` : "Abkühlen lassen";
    if ("toViscosity" in cooling)
      return `${how}, bis der Ansatz auf ${say.pascalSeconds(cooling.toViscosity)} eingedickt ist${say.given(step.temperatureEnd, (end) => `, vorhergesagt bei ${say.celsius(end)}`)}${within(cooling.within, say)}${stirring(step, say)}${say.given(step.stirring, ({ power, torque }) => ` (der Rührer nimmt dann etwa ${say.watts(power, 2)} auf, ${say.newtonMetres(torque)})`)}`;
    return `${how} auf ${say.celsius(cooling.to)}${within(cooling.within, say)}${stirring(step, say)}`;
  },
  stir: (step, say) => `${say.duration(read(step, "stir").for)} rühren${atSpeed(step, say)}`,
  add: (step, say) => {
    const { phase, additions, speeds } = read(step, "add");
    const turning =
      say.given(
        speeds,
        (all) =>
          `, ${say.list(all.map(({ fromOil, speed }) => `mit ${say.rpm(speed)} ab ${say.percent(fromOil)} Öl vom Volumen`))}`,
      ) || atSpeed(step, say);
    const form =
      additions === "stream" ? "als Strahl, mit den Fördermengen der Zugabetabelle" : "nach der Zugabetabelle";
    return `Einrühren: ${partOf(step, say)}Phase ${phase} (${say.kilograms(step.massCharged)})${turning}, ${form}`;
  },
  "match clarity": () =>
    "Eine Probe in einem Glas wie dem des Labors durchsehen, bei Raumtemperatur und sobald ihre Luft herausgezogen oder abgeschleudert ist: sie muss so klar sein wie die des Labors (☐ klar ☐ nicht klar). Ist sie es nicht, vor dem Weitermachen den Verantwortlichen der Rezeptur fragen",
  check: (step, say) => {
    const { what, expect } = read(step, "check");
    const wanted = say.given(expect, (right) => ` Richtig ist: ${right}.`);
    return `Prüfen: ${what}.${wanted} (☐ richtig ☐ nicht richtig) Stimmt es nicht, vor dem Weitermachen den Verantwortlichen der Rezeptur fragen`;
  },
  "de-aerate": (step, say) => {
    const { for: duration, pressure, speed } = read(step, "de-aerate");
    const stirred = say.given(speed, (turns) => `, dabei langsam mit ${say.rpm(turns)} rühren`) || ", ohne Rühren";
    return `${say.duration(duration)} entlüften${say.given(pressure, (low) => ` bei ${say.millibars(low)} absolut`)}${stirred}`;
  },
  fill: (step, say) => {
    const { for: duration, packsPerMinute, held, jacketAt } = read(step, "fill");
    const rate = say.given(packsPerMinute, (count) => `, ${say.number(count)} je Minute`);
    const how = say.given(held, () => ", der Kessel auf der Heizung") || onJacket(jacketAt, say);
    return `Die Packungen füllen${within(duration, say)}${rate}${how}${stirring(step, say)}`;
  },
  rest: (step, say) =>
    `${step.inPacks ? "Die Packungen" : "Den Rührer abstellen und den Ansatz"} ${say.duration(read(step, "rest").for)} ruhen lassen`,
};
