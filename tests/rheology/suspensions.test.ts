import fc from "fast-check";
import {
  batchelorViscosity,
  einsteinViscosity,
  kriegerDoughertyViscosity,
  letDown,
  levellingTime,
  loadAtViscosity,
  maronPierceViscosity,
  oilAbsorption,
  packedFraction,
  residualBrushMark,
  shearRatesInUse,
  viscositiesInUse,
  wettingOil,
} from "gelwright/rheology";
import { expect, test } from "vitest";
import { march } from "../support/ode.js";
import { between, logarithmic, relative } from "./arbitraries.js";

test("however they are packed, a few particles thicken as Einstein says", () => {
  fc.assert(
    fc.property(between(0.3, 0.74), (volumeFractionPacked) => {
      const volumeFraction = 1e-6;
      const dilute = einsteinViscosity({ volumeFraction }) - 1;
      expect(relative(kriegerDoughertyViscosity({ volumeFraction, volumeFractionPacked }) - 1, dilute)).toBeLessThan(
        1e-4,
      );
      expect(relative(batchelorViscosity({ volumeFraction }) - 1, dilute)).toBeLessThan(1e-4);
    }),
  );
});

test("more particles thicken more, and Krieger and Dougherty's law is Maron and Pierce's where [η] φm is 2", () => {
  fc.assert(
    fc.property(between(0.3, 0.74), between(0.01, 0.95), (volumeFractionPacked, share) => {
      const volumeFraction = share * volumeFractionPacked;
      const packed = { volumeFractionPacked, intrinsicViscosity: 2 / volumeFractionPacked };
      const thick = kriegerDoughertyViscosity({ ...packed, volumeFraction });
      expect(relative(thick, maronPierceViscosity({ volumeFraction, volumeFractionPacked }))).toBeLessThan(1e-13);
      expect(kriegerDoughertyViscosity({ ...packed, volumeFraction: volumeFraction * 1.02 })).toBeGreaterThan(thick);
      expect(relative(loadAtViscosity({ ...packed, relativeViscosity: thick }), volumeFraction)).toBeLessThan(1e-12);
    }),
  );
});

test("dilute laws end where they end, and a packed suspension does not flow", () => {
  expect(() => einsteinViscosity({ volumeFraction: 0.05 })).toThrow("up to 0.02 for a dilute suspension");
  expect(() => batchelorViscosity({ volumeFraction: 0.2 })).toThrow("up to 0.1 for a dilute suspension");
  expect(() => maronPierceViscosity({ volumeFraction: 0.6, volumeFractionPacked: 0.6 })).toThrow(
    "volumeFraction: found 0.6, expected below 0.6, where the particles are packed and nothing flows",
  );
  expect(() => loadAtViscosity({ relativeViscosity: 0.9, volumeFractionPacked: 0.6 })).toThrow("particles thicken");
});

test("the oil of a rub-out fills the gaps between the pigment", () => {
  fc.assert(
    fc.property(
      logarithmic(1e-7, 1e-5),
      logarithmic(1e-3, 1e-2),
      between(1500, 6000),
      (volumeOil, massPigment, densityPigment) => {
        const absorption = oilAbsorption({ volumeOil, massPigment });
        const pigmentVolume = massPigment / densityPigment;
        const packed = packedFraction({ oilAbsorption: absorption, densityPigment });
        expect(relative(packed, pigmentVolume / (pigmentVolume + volumeOil))).toBeLessThan(1e-12);
        const oil = wettingOil({ massPigment, oilAbsorption: absorption, densityOil: 915 });
        expect(relative(oil / 915, volumeOil)).toBeLessThan(1e-12);
      },
    ),
  );
});

test("a let-down keeps its mass and its pigment", () => {
  fc.assert(
    fc.property(
      between(0.1, 100),
      between(0, 0.2),
      between(0.3, 0.8),
      between(0, 1),
      (mass, pigmentInBase, pigmentInPaste, share) => {
        const pigment = pigmentInBase + share * (pigmentInPaste - pigmentInBase);
        const { paste, base } = letDown({ mass, pigment, pigmentInPaste, pigmentInBase });
        expect(relative(paste + base, mass)).toBeLessThan(1e-12);
        expect(Math.abs(paste * pigmentInPaste + base * pigmentInBase - mass * pigment)).toBeLessThan(1e-12 * mass);
        expect(paste).toBeGreaterThanOrEqual(0);
      },
    ),
  );
  expect(() => letDown({ mass: 1, pigment: 0.6, pigmentInPaste: 0.5 })).toThrow(
    "pigment: found 0.6, expected from 0 to 0.5",
  );
  expect(() => letDown({ mass: 1, pigment: 0, pigmentInPaste: 0.1, pigmentInBase: 0.1 })).toThrow(
    "more than 0.1, as in the base",
  );
});

// The lubrication equation h_t = −(σ/3μ)(h³ h_xxx)_x on a ring of cells, stepped through time by an ODE solver.
test("low brush marks level as the lubrication equation has them", () => {
  const [surfaceTension, viscosity, thickness, wavelength] = [0.03, 1, 100e-6, 0.002];
  const cells = 24;
  const width = wavelength / cells;
  const amplitude = 1e-3;
  const start = [...Array(cells).keys()].map((i) => 1 + amplitude * Math.cos((2 * Math.PI * (i + 0.5)) / cells));
  const time = levellingTime({ viscosity, surfaceTension, thickness, wavelength });
  const pace = (surfaceTension * thickness ** 3 * time) / (3 * viscosity * width ** 4);
  const end = march(
    (_time, h) => {
      const at = (i: number) => h[(i + cells) % cells] as number;
      const bend = (i: number) => at(i - 1) - 2 * at(i) + at(i + 1);
      const flux = (i: number) => ((at(i) + at(i + 1)) / 2) ** 3 * (bend(i + 1) - bend(i));
      return h.map((_, i) => -pace * (flux(i) - flux(i - 1)));
    },
    start,
    1,
    1e-11,
  );
  const left = (Math.max(...end) - Math.min(...end)) / (Math.max(...start) - Math.min(...start));
  // On a ring of cells a wave levels a little slower, by what differences make of its fourth derivative.
  const slower = (Math.sin(Math.PI / cells) / (Math.PI / cells)) ** 4;
  expect(relative(left, Math.exp(-slower))).toBeLessThan(1e-5);
});

test("halving what is left of the marks takes as long each time, and thicker films level faster", () => {
  const film = { viscosity: 1, surfaceTension: 0.03, thickness: 100e-6, wavelength: 0.002 };
  const half = levellingTime({ ...film, remaining: 0.5 });
  expect(relative(levellingTime({ ...film, remaining: 0.25 }), 2 * half)).toBeLessThan(1e-14);
  expect(relative(levellingTime({ ...film, thickness: 200e-6, remaining: 0.5 }), half / 8)).toBeLessThan(1e-14);
  expect(relative(levellingTime({ ...film, wavelength: 0.004, remaining: 0.5 }), half * 16)).toBeLessThan(1e-14);
  expect(() => levellingTime({ ...film, remaining: 1 })).toThrow("remaining: found 1, expected between 0 and 1");
  const marks = { yieldStress: 0.5, surfaceTension: 0.03, thickness: 100e-6, wavelength: 0.002 };
  expect(relative(residualBrushMark({ ...marks, wavelength: 0.004 }), 8 * residualBrushMark(marks))).toBeLessThan(
    1e-14,
  );
});

test("the viscosities of use fall from standing to spraying, for a gel", () => {
  const curve = { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 } as const;
  const uses = viscositiesInUse({ curve });
  expect(uses.map(({ use }) => use)).toEqual(shearRatesInUse.map(({ use }) => use));
  for (const [i, { viscosity }] of uses.entries())
    expect(viscosity).toBeLessThanOrEqual(uses[i - 1]?.viscosity ?? Number.POSITIVE_INFINITY);
});
