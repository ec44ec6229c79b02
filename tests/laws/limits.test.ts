import {
  airProperties,
  apparentViscosityAt,
  conductivityAt,
  type FlowCurve,
  heatLossAt,
  nusseltHorizontalPlate,
  nusseltVerticalCylinder,
  nusseltVerticalPlate,
  outerTemperature,
  rayleighNumber,
  shearRateAt,
  shearStressAt,
  specificHeatAt,
  specificHeatFunction,
  temperatureAtViscosity,
  vapourPressureAt,
  vapourPressures,
  viscosityAt,
  yieldStressOf,
} from "gelwright/laws";
import { describe, expect, test } from "vitest";
import { shifted } from "../../src/laws/polynomial.js";

const code = (is: string) => expect.objectContaining({ code: is });

describe("flow curves", () => {
  const curves: readonly (readonly [FlowCurve, yieldStress: number, stressAtTwo: number])[] = [
    [{ law: "newton", viscosity: 3 }, 0, 6],
    [{ law: "power-law", consistency: 5, flowIndex: 2 }, 0, 20],
    [{ law: "bingham", yieldStress: 7, plasticViscosity: 3 }, 7, 13],
    // (√τ = √9 + √(2·2))² = 25.
    [{ law: "casson", yieldStress: 9, plasticViscosity: 2 }, 9, 25],
    [{ law: "herschel-bulkley", yieldStress: 1, consistency: 3, flowIndex: 3 }, 1, 25],
    // At λγ̇ = 1 and a = 1, n = 0 the viscosity is halfway between its ends: 1 + (9 − 1)/2.
    [
      {
        ...{ law: "carreau-yasuda", viscosityZero: 9, viscosityInfinite: 1, timeConstant: 0.5, transition: 1 },
        flowIndex: 1e-12,
      },
      0,
      10,
    ],
  ];

  test.each(curves)(
    "%o has its yield stress, and its stress at a rate of 2 1/s belongs to that rate",
    (curve, yields, stress) => {
      expect(yieldStressOf(curve)).toBe(yields);
      expect(shearStressAt({ curve, shearRate: 2 })).toBeCloseTo(stress, 9);
      expect(shearRateAt({ curve, stress })).toBeCloseTo(2, 8);
      expect(apparentViscosityAt({ curve, shearRate: 2 })).toBeCloseTo(stress / 2, 9);
      expect(shearStressAt({ curve, shearRate: 0 })).toBe(yields);
      // At the yield stress and below nothing flows.
      expect(shearRateAt({ curve, stress: yields })).toBe(0);
      expect(shearRateAt({ curve, stress: yields / 2 })).toBe(0);
    },
  );

  test("only what flows under any stress and is not thinned without end has a viscosity at rest", () => {
    const atRest = curves.map(([curve]) => {
      try {
        return apparentViscosityAt({ curve, shearRate: 0 });
      } catch {
        return undefined;
      }
    });
    expect(atRest).toEqual([3, undefined, undefined, undefined, undefined, 9]);
  });

  test("a curve that thickens, or thins over many decades, gives its rates back", () => {
    const carreau = { law: "carreau-yasuda", timeConstant: 10, transition: 0.7 } as const;
    for (const curve of [
      { ...carreau, viscosityZero: 100, viscosityInfinite: 0, flowIndex: 0.05 },
      { ...carreau, viscosityZero: 100, viscosityInfinite: 100, flowIndex: 0.3 },
      { ...carreau, viscosityZero: 1, viscosityInfinite: 0, flowIndex: 1.6 },
    ])
      for (const shearRate of [1e-6, 1e-2, 1, 1e3]) {
        const stress = shearStressAt({ curve, shearRate });
        expect(shearRateAt({ curve, stress }) / shearRate).toBeCloseTo(1, 9);
      }
    const wrong = { ...carreau, viscosityZero: 1, viscosityInfinite: 1.001, flowIndex: 0.5 };
    expect(() => shearRateAt({ curve: wrong, stress: 1 })).toThrow("viscosityInfinite");
    expect(() => yieldStressOf({ law: "maxwell" } as never)).toThrow("a flow-curve law");
  });
});

describe("vapour pressure", () => {
  // log10 p = 10 − 2000/(T − 50).
  const antoine = { law: "antoine", logarithm: "decimal", constantA: 10, constantB: 2000, constantC: -50 } as const;
  const law = { ...antoine, temperatureMin: 26.85, temperatureMax: 176.85 };

  test("a law holds at both ends of its fit and not beyond, unless it is extended", () => {
    const at = (temperature: number) => vapourPressureAt({ law, temperature });
    expect(at(26.85)).toBeCloseTo(100, 8);
    expect(at(176.85) / 1e5).toBeCloseTo(1, 10);
    for (const temperature of [26.84, 176.86]) {
      expect(() => at(temperature)).toThrow(code("range"));
      expect(vapourPressureAt({ law, temperature, beyond: "extend" })).toBeGreaterThan(0);
    }
    expect(() => vapourPressureAt({ law: { ...law, temperatureMax: 26.85 }, temperature: 26.85 })).toThrow(
      "temperatureMax",
    );
  });

  test("no law is extended through its pole, at 50 K here", () => {
    const cold = (temperature: number) => vapourPressureAt({ law, temperature, beyond: "extend" });
    expect(cold(-200)).toBeGreaterThan(0);
    for (const temperature of [-223.15, -240]) expect(() => cold(temperature)).toThrow("pole at -223.1");
  });

  test("water has its normal boiling point in both forms of law", () => {
    for (const own of [vapourPressures.water])
      expect(vapourPressureAt({ law: own, temperature: 99.974 }) / 101325).toBeCloseTo(1, 2);
    expect(() => vapourPressureAt({ law: { ...law, law: "wagner" } as never, temperature: 60 })).toThrow("dippr-101");
    expect(() => vapourPressureAt({ law: { ...law, logarithm: "binary" } as never, temperature: 60 })).toThrow(
      '"decimal" or "natural"',
    );
    expect(() => vapourPressureAt({ law, temperature: 60, beyond: "on" as never })).toThrow('"throw" or "extend"');
    expect(vapourPressureAt({ law, temperature: 60, beyond: "throw" })).toBe(
      vapourPressureAt({ law, temperature: 60 }),
    );
  });
});

describe("heat loss by convection", () => {
  const air = { conductivity: 0.026, kinematicViscosity: 1.6e-5, prandtl: 0.7 } as const;
  const [temperature, temperatureAmbient] = [60, 20];

  test("a cylinder loses what its Nusselt number says, more than a plate of its height and area", () => {
    const upright = { law: "natural convection", surface: "vertical", area: 0.4, height: 0.3, air } as const;
    const rayleigh = rayleighNumber({
      ...{ temperatureSurface: temperature, temperatureAmbient, length: 0.3, air },
    });
    const watts = (nusselt: number) => ((nusselt * 0.026) / 0.3) * 0.4 * 40;
    const loss = (law: object) => heatLossAt({ law: law as never, temperature, temperatureAmbient });
    const plate = nusseltVerticalPlate({ rayleigh, prandtl: 0.7 });
    const cylinder = nusseltVerticalCylinder({ rayleigh, prandtl: 0.7, height: 0.3, diameter: 0.1 });
    expect(cylinder).toBeGreaterThan(plate);
    expect(loss(upright)).toBeCloseTo(watts(plate), 9);
    expect(loss({ ...upright, diameter: 0.1 })).toBeCloseTo(watts(cylinder), 9);
  });

  test("a surface that is warm and looks up loses as one that is cold and looks down, over area by perimeter", () => {
    const flat = { law: "natural convection", area: 0.4, perimeter: 2, air } as const;
    const rayleigh = rayleighNumber({
      ...{ temperatureSurface: temperature, temperatureAmbient, length: 0.2, air },
    });
    for (const [surface, facing] of [
      ["facing up", "up"],
      ["facing down", "down"],
    ] as const) {
      const nusselt = nusseltHorizontalPlate({ rayleigh, facing });
      const loss = heatLossAt({ law: { ...flat, surface }, temperature, temperatureAmbient });
      expect(loss).toBeCloseTo(((nusselt * 0.026) / 0.2) * 0.4 * 40, 9);
    }
    const cold = (surface: "facing up" | "facing down") =>
      heatLossAt({ law: { ...flat, surface }, temperature: 0, temperatureAmbient: 40 });
    expect(Math.abs(cold("facing down"))).toBeGreaterThan(Math.abs(cold("facing up")));
    expect(() =>
      heatLossAt({ law: { ...flat, surface: "sideways" } as never, temperature, temperatureAmbient }),
    ).toThrow('"vertical" or "facing …"');
  });

  test("correlations hold at the ends of their Rayleigh numbers and Prandtl numbers", () => {
    const flat = (facing: "up" | "down", rayleigh: number) => () => nusseltHorizontalPlate({ facing, rayleigh });
    for (const [facing, min, max] of [
      ["up", 1, 1e11],
      ["down", 1e5, 1e10],
    ] as const) {
      expect(flat(facing, min)()).toBeGreaterThan(0);
      expect(flat(facing, max)()).toBeGreaterThan(0);
      expect(flat(facing, min * 0.999)).toThrow(code("range"));
      expect(flat(facing, max * 1.001)).toThrow(code("range"));
    }
    expect(flat("sideways" as "up", 1e6)).toThrow('"up" or "down"');
    expect(nusseltVerticalPlate({ rayleigh: 0, prandtl: 1 })).toBeCloseTo(0.825 ** 2, 12);
    expect(nusseltVerticalPlate({ rayleigh: 1e12, prandtl: 1 })).toBeGreaterThan(100);
    expect(() => nusseltVerticalPlate({ rayleigh: 1.001e12, prandtl: 1 })).toThrow(code("range"));
    const cylinder = (prandtl: number) => () =>
      nusseltVerticalCylinder({ rayleigh: 1e6, prandtl, height: 1, diameter: 1 });
    for (const prandtl of [0.01, 100]) expect(cylinder(prandtl)()).toBeGreaterThan(0);
    for (const prandtl of [0.0099, 100.1]) expect(cylinder(prandtl)).toThrow(code("range"));
  });

  test("air is known from −50 to 150 °C, both included", () => {
    for (const at of [-50, 150]) expect(airProperties({ temperature: at }).prandtl).toBeCloseTo(0.71, 1);
    for (const at of [-50.1, 150.1]) expect(() => airProperties({ temperature: at })).toThrow(code("range"));
  });

  test("layers are judged at their outer surface: one that the search passes may be too warm for the air", () => {
    const outside = [{ law: "natural convection", surface: "vertical", area: 1, height: 0.5 }] as const;
    const layers = (thickness: number) =>
      ({ law: "layers", area: 1, layers: [{ thickness, conductivity: 0.04 }], outside }) as const;
    // Half-way to 400 °C is beyond the air's 150 °C; behind 10 cm of wool the surface is not.
    const at = { temperature: 400, temperatureAmbient: 20 };
    expect(() => outerTemperature({ law: layers(1e-6), ...at })).toThrow(code("range"));
    expect(() => outerTemperature({ law: { law: "newton", conductance: 1 } as never, ...at })).toThrow('"layers"');
    expect(outerTemperature({ law: layers(0.1), temperature: 20, temperatureAmbient: 20 })).toBe(20);
  });
});

describe("polynomials and ranges", () => {
  const within = { law: "polynomial", coefficients: [2000, 2], temperatureMin: 0, temperatureMax: 100 } as const;

  test("a law holds at both ends of its range, and a range has two ends", () => {
    const at = (temperature: number) => specificHeatAt({ law: within, temperature });
    expect([at(0), at(100)]).toEqual([2000, 2200]);
    for (const temperature of [-0.1, 100.1]) expect(() => at(temperature)).toThrow(code("range"));
    expect(() => specificHeatAt({ law: { ...within, temperatureMin: 100 }, temperature: 100 })).toThrow(
      "temperatureMin",
    );
    // A property that falls to nothing or grows without end is none.
    const falling = { law: "polynomial", coefficients: [1000, -10] } as const;
    expect(() => specificHeatAt({ law: falling, temperature: 100 })).toThrow("above 0 at 100 °C");
    const endless = { law: "polynomial", coefficients: [1, 1e307] } as const;
    expect(() => specificHeatAt({ law: endless, temperature: 100 })).toThrow(code("range"));
    expect(() => conductivityAt({ law: { law: "table" } as never, temperature: 20 })).toThrow("a conductivity law");
    expect(() => specificHeatFunction({ law: "table" } as never)).toThrow("a specific-heat law");
  });

  test("a shifted polynomial is the same polynomial: (1 + x)² at x = 2 + 3y is 9 + 18y + 9y²", () => {
    expect(shifted([1, 2, 1], 2, 3)).toEqual([9, 18, 9]);
    expect(shifted([4], 7, 5)).toEqual([4]);
    expect(shifted([0, 0, 0, 1], -1, 2)).toEqual([-1, 6, -12, 8]);
  });
});

describe("viscosity", () => {
  const points = [
    { temperature: 80, viscosity: 0.01 },
    { temperature: 40, viscosity: 1 },
  ];

  test("readings that do not thicken on cooling are refused, also where they stay the same", () => {
    const flat = [points[0], { temperature: 40, viscosity: 0.01 }] as never;
    expect(() => viscosityAt({ law: { law: "readings", points: flat }, temperature: 60 })).toThrow(
      "viscosity falls as it warms",
    );
  });

  test("the readings' own viscosities are found at their temperatures, and none beyond them", () => {
    const law = { law: "readings", points } as const;
    const at = (viscosity: number) => temperatureAtViscosity({ law, viscosity });
    expect([at(0.01), at(1)]).toEqual([80, 40]);
    for (const viscosity of [0.0099, 1.01]) expect(() => at(viscosity)).toThrow(code("range"));
  });

  test("a melt is never thinner than its factor, nor as thin", () => {
    const andrade = { law: "andrade", factor: 0.001, activationEnergy: 20000 } as const;
    const vogel = { law: "vogel-fulcher-tammann", lnFactor: 0, coefficient: 500, temperatureVogel: -50 } as const;
    for (const [law, viscosity] of [
      [andrade, 0.001],
      [andrade, 0.0009],
      [vogel, 1],
      [vogel, 0.5],
    ] as const)
      expect(() => temperatureAtViscosity({ law, viscosity })).toThrow(code("unreachable"));
  });

  test("a gel has the viscosity of its melt at the setting temperature, and readings bound the search of a colder one", () => {
    const melt = { law: "readings", points } as const;
    const law = { law: "setting", melt, temperatureSetting: 60, steepness: 0.5 } as const;
    const atSetting = viscosityAt({ law: melt, temperature: 60 });
    expect(viscosityAt({ law, temperature: 60 })).toBe(atSetting);
    expect(temperatureAtViscosity({ law, viscosity: atSetting })).toBeCloseTo(60, 9);
    const coldest = viscosityAt({ law, temperature: 40 });
    expect(coldest).toBeCloseTo(Math.exp(10), 6);
    expect(temperatureAtViscosity({ law, viscosity: coldest })).toBeCloseTo(40, 9);
    expect(() => temperatureAtViscosity({ law, viscosity: coldest * 1.01 })).toThrow(code("range"));
    const constant = { ...law, melt: { law: "constant", viscosity: 2 } } as const;
    expect(temperatureAtViscosity({ law: constant, viscosity: 2 * Math.E })).toBeCloseTo(58, 9);
    expect(() => temperatureAtViscosity({ law: constant, viscosity: 2 })).toThrow(code("unreachable"));
  });

  test("a viscosity that no double holds is refused", () => {
    const law = { law: "andrade", factor: 1e-300, activationEnergy: 1e-6 } as const;
    expect(viscosityAt({ law, temperature: 20 })).toBeGreaterThan(0);
    const steep = {
      law: "setting",
      melt: { law: "constant", viscosity: 1 },
      temperatureSetting: 60,
      steepness: 50,
    } as const;
    expect(() => viscosityAt({ law: steep, temperature: 0 })).toThrow("that a double can hold");
    const thin = { law: "andrade", factor: 1e-320, activationEnergy: 1 } as const;
    expect(viscosityAt({ law: thin, temperature: 20 })).toBeGreaterThan(0);
    const nothing = { law: "vogel-fulcher-tammann", lnFactor: -800, coefficient: 1, temperatureVogel: -50 } as const;
    expect(() => viscosityAt({ law: nothing, temperature: 20 })).toThrow("that a double can hold");
  });
});
