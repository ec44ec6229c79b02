import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import {
  aggregateExposure,
  marginOfSafety,
  massFractionForMargin,
  systemicExposure,
  systemicExposureByArea,
} from "gelwright/exposure";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { without } from "../support/without.js";

const exposure = between(0.08, 200);
const part = between(1e-4, 1);
const dose = between(0.1, 1000);

test("more of the product, of the ingredient or through the skin never gives a larger margin", () => {
  fc.assert(
    fc.property(exposure, part, part, dose, part, between(1, 3), fc.nat(2), (e, w, a, d, b, more, which) => {
      const margin = (exposurePerBodyWeight: number, massFraction: number, dermalAbsorption: number) =>
        marginOfSafety({
          pointOfDeparture: d,
          bioavailability: b,
          systemicExposure: systemicExposure({ exposurePerBodyWeight, massFraction, dermalAbsorption }).dose,
        }).margin;
      const raised = [e, w, a].map((value, i) => (i === which ? Math.min(value * more, i ? 1 : Infinity) : value));
      const [e2 = e, w2 = w, a2 = a] = raised;
      expect(margin(e2, w2, a2)).toBeLessThanOrEqual(margin(e, w, a) * (1 + 1e-15));
    }),
  );
});

test("a larger dose of the study, or more of it taken up, never gives a smaller margin", () => {
  fc.assert(
    fc.property(
      dose,
      between(1e-3, 0.5),
      between(1e-3, 10),
      between(1, 2),
      (pointOfDeparture, bioavailability, systemic, more) => {
        const margin = (d: number, b: number) =>
          marginOfSafety({ pointOfDeparture: d, bioavailability: b, systemicExposure: systemic }).margin;
        const before = margin(pointOfDeparture, bioavailability);
        expect(margin(pointOfDeparture * more, bioavailability)).toBeGreaterThanOrEqual(before);
        expect(margin(pointOfDeparture, bioavailability * more)).toBeGreaterThanOrEqual(before);
      },
    ),
  );
});

test("the largest share gives the margin that was wanted, and the whole product at least that", () => {
  fc.assert(
    fc.property(
      exposure,
      part,
      dose,
      part,
      between(1, 1000),
      (exposurePerBodyWeight, dermalAbsorption, d, b, wanted) => {
        const study = { pointOfDeparture: d, bioavailability: b };
        const { massFractionMax, limitedBy } = massFractionForMargin({
          exposurePerBodyWeight,
          dermalAbsorption,
          ...study,
          margin: wanted,
        });
        const product = { exposurePerBodyWeight, massFraction: massFractionMax, dermalAbsorption };
        const { margin } = marginOfSafety({ ...study, systemicExposure: systemicExposure(product).dose });
        if (limitedBy === "margin") expect(margin / wanted).toBeCloseTo(1, 12);
        else {
          expect(massFractionMax).toBe(1);
          expect(margin).toBeGreaterThanOrEqual(wanted * (1 - 1e-12));
        }
      },
    ),
  );
});

test("an ingredient that the skin does not take up is limited by the product alone", () => {
  const study = { pointOfDeparture: 1, bioavailability: 1 };
  expect(
    massFractionForMargin({ exposurePerBodyWeight: 100, dermalAbsorption: 0, ...study, margin: 100 }),
  ).toMatchObject({ massFractionMax: 1, limitedBy: "whole product" });
});

const products = fc.array(
  fc.record({
    name: fc.constantFrom("body gel", "hand gel", "hair gel"),
    exposurePerBodyWeight: exposure,
    massFraction: part,
    dermalAbsorption: part,
  }),
  { minLength: 1, maxLength: 6 },
);

test("an aggregate is the sum of its products, and its margin that of the sum", () => {
  fc.assert(
    fc.property(products, dose, part, (each, pointOfDeparture, bioavailability) => {
      const study = { pointOfDeparture, bioavailability };
      const aggregate = aggregateExposure({ products: each, study });
      const sum = each.reduce((so, product) => so + systemicExposure(without(product, "name")).dose, 0);
      expect(aggregate.dose / sum).toBeCloseTo(1, 12);
      expect(aggregate.margin).toBeCloseTo(marginOfSafety({ ...study, systemicExposure: aggregate.dose }).margin, 8);
      expect(aggregate.products.map((product) => product.dose)).toEqual(
        aggregate.products.map((product) => product.dose).sort((a, b) => b - a),
      );
    }),
  );
});

test("the order of the products does not matter, and one more never raises the margin", () => {
  fc.assert(
    fc.property(products, (each) => {
      const study = { pointOfDeparture: 100, bioavailability: 0.5 };
      const all = aggregateExposure({ products: each, study });
      const turned = aggregateExposure({ products: [...each].reverse(), study });
      expect(turned.dose).toBe(all.dose);
      if (each.length > 1)
        expect(aggregateExposure({ products: each.slice(1), study }).margin).toBeGreaterThanOrEqual(
          (all.margin ?? 0) * (1 - 1e-12),
        );
    }),
  );
});

test("without a study, or with nothing taken up, there is no margin", () => {
  const product = { name: "gel", exposurePerBodyWeight: 10, massFraction: 0.1, dermalAbsorption: 0 };
  expect(aggregateExposure({ products: [product] }).margin).toBeUndefined();
  const study = { pointOfDeparture: 100, bioavailability: 1 };
  expect(aggregateExposure({ products: [product], study }).margin).toBeUndefined();
  expect(() => marginOfSafety({ ...study, systemicExposure: 0 })).toThrow(CalculationError);
  expect(() => marginOfSafety({ pointOfDeparture: 1, bioavailability: 0, systemicExposure: 1 })).toThrow(/above 0/);
});

test("what an area takes up grows with the area and the times a day, and is shared by the body", () => {
  const study = { absorbedPerArea: 0.6, area: 500, applicationsPerDay: 2, bodyWeight: 60 };
  expect(systemicExposureByArea({ ...study, area: 1000 }).dose).toBeCloseTo(0.02, 15);
  expect(systemicExposureByArea({ ...study, applicationsPerDay: 1 }).dose).toBeCloseTo(0.005, 15);
  expect(systemicExposureByArea({ ...study, bodyWeight: 30 }).dose).toBeCloseTo(0.02, 15);
});

test("every result carries the caution, and none a judgement", () => {
  const product = { exposurePerBodyWeight: 10, massFraction: 0.1, dermalAbsorption: 0.5 };
  const study = { pointOfDeparture: 100, bioavailability: 1 };
  const results = [
    systemicExposure(product),
    marginOfSafety({ ...study, systemicExposure: 1 }),
    massFractionForMargin({ exposurePerBodyWeight: 10, dermalAbsorption: 1, ...study, margin: 100 }),
    aggregateExposure({ products: [{ name: "gel", ...product }], study }),
  ];
  for (const result of results) {
    expect(result.caution).toBe("qualified-assessor-decides");
    expect(JSON.stringify(result)).not.toMatch(/safe/i);
  }
});
