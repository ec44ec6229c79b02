import type { Answer } from "gelwright/plan";

/** How far a figure may be from its recomputed value, as a share of it, and why. */
export interface Tolerance {
  readonly relative: number;
  readonly because: string;
}

const level =
  "The level of an emulsion counts at the temperature of the room, in the script at that of the gel, which stirring has warmed by a kelvin or three.";

/** By the question; the reason says what the two ways do differently on purpose. */
export const tolerances: Readonly<Partial<Record<Answer["id"], Tolerance>>> & { readonly "every other": Tolerance } = {
  "every other": {
    relative: 1e-6,
    because:
      "The script steps the heat balance in time to 1e-10; density and level that the power of a stirrer rests on follow the temperature there, and stand for the middle of a step here.",
  },
  "air-has-time": { relative: 3e-3, because: level },
  "gel-moves-at-surface": { relative: 3e-3, because: level },
  "motor-power": { relative: 1e-4, because: level },
  "motor-torque": { relative: 1e-4, because: level },
  "stirrer-covered": { relative: 1e-5, because: level },
  "air-leaves": {
    relative: 1e-5,
    because: "As for every other, over a step in which the stirrer takes tens of watts.",
  },
  "particles-go-in": {
    relative: 3e-5,
    because:
      "The share of the volume that is particles counts at 20 °C here too, as for how far they settle: a thousandth of a kelvin.",
  },
  "particles-settle": {
    relative: 5e-4,
    because:
      "The share of the volume that is particles counts at 20 °C, in the script at the temperature of the melt, which is a twentieth lighter.",
  },
  "done-in-time": {
    relative: 5e-5,
    because: "As for every other, over 24 K through a jacket, along which the wall passes the end of the readings.",
  },
  "fits-the-brim": {
    relative: 1e-4,
    because: "The density of the product is that of its formula, in the script that of what was weighed.",
  },
  "head-space-when-hot": {
    relative: 1e-3,
    because: "As for the brim; what is left is a tenth of what is filled, so that it is off by ten times as much.",
  },
  "vacuum-boils": {
    relative: 1e-2,
    because: "The vapour pressure of water by Antoine's equation, in the script by IAPWS-IF97, region 4.",
  },
};
