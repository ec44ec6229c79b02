import { readFileSync } from "node:fs";
import type { FragranceAllergens, IngredientList } from "gelwright/labelling";
import { exposureFor, labelFor, type Plan, prepareJob } from "gelwright/plan";
import { shelfLife, welchTest } from "gelwright/stability";
import { describe, expect, test } from "vitest";
import { known } from "../support/answers.js";
import { type After, compareAnswers, notRecomputed, type RecomputedJobs } from "./independent/compare.js";
import { tolerances } from "./independent/tolerances.js";
import { plansByName } from "./jobs/plans.js";

const recomputed = JSON.parse(
  readFileSync(new URL("independent/recomputed.json", import.meta.url), "utf8"),
) as RecomputedJobs;
const plans = plansByName().filter(([name]) => name in recomputed.jobs);
const compared = plans.flatMap(([name, { plan }]) =>
  compareAnswers(plan.answers, known(recomputed.jobs[name])).map((one) => ({ name, ...one })),
);

describe("plans, recomputed by a script that shares no code with them", () => {
  test("are both examples at both scales, and four jobs", () => {
    expect(plans.filter(([name]) => /^(cuticle|scrub)-gel-/.test(name))).toHaveLength(4);
    expect(plans).toHaveLength(8);
  });

  test("are recomputed in every answer", () => {
    expect(plans.flatMap(([name, { plan }]) => notRecomputed(plan.answers, known(recomputed.jobs[name])))).toEqual([]);
    expect(compared.length).toBeGreaterThan(280);
  });

  test.each(plans.map(([name]) => name))("%s has the same figures, limits, verdicts and deciding states", (name) => {
    const off = compared.filter((one) => one.name === name);
    expect(off.filter(({ deviation, allowed, differs }) => deviation > allowed || differs.length > 0)).toEqual([]);
  });

  test("no tolerance is wider than it has to be", () => {
    const rest = tolerances["every other"].relative;
    for (const [id, { relative, because }] of Object.entries(tolerances)) {
      expect(because).toMatch(/^[A-Z].*\.$/);
      const of = compared.filter((one) => (id === "every other" ? !(one.id in tolerances) : one.id === id));
      const worst = Math.max(...of.map(({ deviation }) => deviation));
      // Within a factor of ten of what is found, and never for a question that would do with the one for all others.
      expect(worst, id).toBeGreaterThan(relative / 30);
      if (id !== "every other") expect(worst, id).toBeGreaterThan(rest);
    }
  });
});

/** Largest deviation of the numbers of one thing from those of another that has the same fields and perhaps more. */
function apart(few: unknown, many: unknown): number {
  if (typeof few === "number") return Math.abs(few - Number(many)) / Math.max(Math.abs(few), 1e-300);
  if (typeof few !== "object" || few === null) return few === many ? 0 : Number.POSITIVE_INFINITY;
  const fields = many as Readonly<Record<string, unknown>>;
  return Math.max(0, ...Object.entries(few).map(([key, one]) => apart(one, fields[key])));
}

describe("after the batch", () => {
  const { after } = recomputed;
  const planOf = (name: string): Plan => known(plans.find(([one]) => one === name))[1].plan;
  const prepared = (name: string) => prepareJob(known(plans.find(([one]) => one === name))[1].job);
  const names = Object.keys(after.packs);

  test.each(names)("%s is filled to the same target, with the same tolerable error and packs", (name) => {
    const { packs } = planOf(name);
    const { massNominal, tolerableError, target, massAimed, packs: count } = known(packs);
    const ours = {
      massNominal,
      tolerableError: tolerableError?.mass,
      target: target?.mass,
      shareRejected: target?.shareRejected,
      massAimed,
      ...count,
    };
    // What is left over is the small rest of two large masses.
    const { massLeft, ...others } = known(after.packs[name]);
    expect(apart(others, ours)).toBeLessThan(1e-9);
    expect(Math.abs(known(massLeft) - known(count?.massLeft))).toBeLessThan(1e-8);
  });

  test.each(names)("%s is stored for the same times", (name) => {
    const storages = Object.fromEntries(
      known(planOf(name).stability).storages.map(({ condition, equivalent }) => [condition, equivalent]),
    );
    expect(apart(after.stability[name], storages)).toBeLessThan(1e-9);
  });

  test.each(names)("%s has the same label: order, allergens above the threshold, claims, certified shares", (name) => {
    const label = labelFor({ prepared: prepared(name) });
    const { ordered, anyOrder, allergens, claims, certified } = known(after.label[name]) as After["label"][string];
    const list = label.list as IngredientList;
    const toName = (label.allergens as FragranceAllergens | undefined)?.toName ?? [];
    const shares = (list: readonly { readonly name: string; readonly share: number }[]) =>
      Object.fromEntries(list.map((one) => [one.name, one.share]));
    expect(list.ordered.map((one) => one.name)).toEqual(Object.keys(ordered));
    expect(apart(ordered, shares(list.ordered))).toBeLessThan(1e-9);
    const free = shares(list.anyOrder);
    for (const [key, share] of Object.entries(anyOrder)) expect(apart(share, free[key]), key).toBeLessThan(1e-9);
    expect(Object.keys(allergens)).toEqual(toName.map((one) => one.name));
    expect(apart(allergens, shares(toName))).toBeLessThan(1e-9);
    for (const [i, { percent, min }] of claims.entries()) {
      expect(label.claims[i]).toMatchObject({ percent });
      expect(apart({ share: { min } }, label.claims[i])).toBeLessThan(1e-9);
    }
    const figures = Object.fromEntries(
      Object.entries(certified ?? {}).map(([figure, share]) => [figure, { min: share, max: share }]),
    );
    expect(apart(certified ? { figures } : {}, label.certified ?? {})).toBeLessThan(1e-9);
  });

  test.each(names)("%s exposes to the same dose, with the same margin", (name) => {
    const materials = exposureFor({ prepared: prepared(name) }).materials.map((one) => [one.material, one] as const);
    expect(apart(after.exposure[name], Object.fromEntries(materials))).toBeLessThan(1e-9);
  });

  test.each(after.shelfLife)("lots are pooled as $model by ICH Q1E, and last as long", ({ lots, min, ...theirs }) => {
    const found = shelfLife({
      lots: Object.entries(lots).map(([name, values]) => ({
        name,
        readings: values.map((value, i) => ({ time: 3 * i, value })),
      })),
      limits: { min },
    });
    const { model, duration, tests } = found;
    expect(model).toBe(theirs.model);
    expect(apart(theirs.duration, duration)).toBeLessThan(1e-8);
    expect(apart(theirs.slopes, tests?.slopes?.probability)).toBeLessThan(1e-6);
    expect(apart(theirs.intercepts, tests?.intercepts?.probability)).toBeLessThan(1e-6);
  });

  test.each(after.welch)(
    "two sets of weighings of bleed differ as much by Welch's test",
    ({ first, second, ...theirs }) => {
      expect(apart(theirs, welchTest({ first, second }))).toBeLessThan(1e-8);
    },
  );
});
