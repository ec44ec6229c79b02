import fc from "fast-check";
import { type LotStage, orderLots } from "gelwright/batch";
import { expect, test } from "vitest";

const hour = 3600;
const stages: readonly LotStage[] = [
  { name: "charge and heat", duration: 1.5 * hour, needs: ["kettle"] },
  { name: "cool", duration: hour, needs: ["kettle"] },
  { name: "fill", duration: 0.5 * hour, needs: ["kettle", "filler"] },
  { name: "rest", duration: 12 * hour, alone: true },
];
const jobs = fc.record({
  lots: fc.integer({ min: 1, max: 12 }),
  hours: fc.integer({ min: 3, max: 12 }),
  kettles: fc.integer({ min: 1, max: 3 }),
  fillers: fc.integer({ min: 1, max: 2 }),
  cleaning: fc.integer({ min: 0, max: 60 }).map((minutes) => minutes * 60),
});
const orderOf = ({ lots, hours, kettles, fillers, cleaning }: typeof jobs extends fc.Arbitrary<infer T> ? T : never) =>
  orderLots({
    lots,
    stages,
    resources: { kettle: kettles, filler: fillers },
    workingDay: hours * hour,
    turnover: { kettle: cleaning },
  });

test("each lot is done in one working day, one stage right after the other; only what runs alone goes on after hours", () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const { entries, days } = orderOf(job);
      expect(entries).toHaveLength(4 * job.lots);
      const wrong = Array.from({ length: job.lots }, (_, i) => i + 1).filter((lot) => {
        const own = entries.filter((entry) => entry.lot === lot);
        return own.some(
          ({ stage, day, start, end }, i) =>
            stage !== stages[i]?.name ||
            day !== own[0]?.day ||
            Math.abs(end - start - stages[i].duration) > 1e-6 ||
            (i > 0 && Math.abs(start - (own[i - 1]?.end ?? 0)) > 1e-6) ||
            (stage !== "rest" && end > job.hours * hour + 1e-5),
        );
      });
      expect(wrong).toEqual([]);
      expect(days).toBe(Math.max(...entries.map(({ day }) => day)));
    }),
  );
});

test("nothing is needed by more lots at once than there is of it, cleaning counted", () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const { entries } = orderOf(job);
      const at = (lot: number, first: string, last: string, more: number) => {
        const own = entries.filter((entry) => entry.lot === lot);
        const [from, to] = [own.find(({ stage }) => stage === first), own.find(({ stage }) => stage === last)];
        const morning = ((from?.day ?? 1) - 1) * job.hours * hour;
        return { from: morning + (from?.start ?? 0), to: morning + (to?.end ?? 0) + more };
      };
      const all = Array.from({ length: job.lots }, (_, i) => i + 1);
      for (const [count, spans] of [
        [job.kettles, all.map((lot) => at(lot, "charge and heat", "fill", job.cleaning))],
        [job.fillers, all.map((lot) => at(lot, "fill", "fill", 0))],
      ] as const)
        for (const { from } of spans)
          expect(spans.filter((one) => one.from <= from + 1e-5 && one.to > from + 1e-5).length).toBeLessThanOrEqual(
            count,
          );
    }),
  );
});

test("with one kettle no order has fewer days than as many lots a day as fit it", () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const { days } = orderOf({ ...job, kettles: 1 });
      const perDay = Math.floor((job.hours * hour + job.cleaning + 1e-6) / (3 * hour + job.cleaning));
      // Cleaning that is left over from the evening may hold up the morning.
      const min = Math.ceil(job.lots / perDay);
      expect(days).toBeGreaterThanOrEqual(min);
      if (job.cleaning === 0) expect(days).toBe(min);
    }),
  );
});

test("another kettle never makes it longer, and no lot begins before the one ahead of it", () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const one = orderOf(job);
      expect(orderOf({ ...job, kettles: job.kettles + 1 }).days).toBeLessThanOrEqual(one.days);
      const begins = one.entries
        .filter(({ stage }) => stage === "charge and heat")
        .map(({ day, start }) => day * 1e6 + start);
      expect([...begins].sort((a, b) => a - b)).toEqual(begins);
    }),
  );
});

test("a lot that is longer than the day is said not to fit, and round the clock it does", () => {
  const long = orderLots({ lots: 2, stages, resources: { kettle: 1, filler: 1 }, workingDay: 2 * hour });
  expect(long.entries).toEqual([]);
  expect(long.notFitting.map(({ lot }) => lot)).toEqual([1, 2]);
  expect(long.notFitting[0]?.reason).toContain("10800 s of work on a lot do not fit a working day of 7200 s");
  const nonstop = orderLots({ lots: 2, stages, resources: { kettle: 1, filler: 1 } });
  expect(nonstop.days).toBe(1);
  expect(nonstop.entries.find(({ lot }) => lot === 2)?.start).toBe(3 * hour);
});

test("a stage that needs what there is none of is refused at its place", () => {
  const odd = [{ name: "mill", duration: 60, needs: ["mill"] }];
  expect(() => orderLots({ lots: 1, stages: odd, resources: { kettle: 1 } })).toThrow(
    'stages[0].needs[0]: found "mill"',
  );
  const alone = [{ name: "rest", duration: 60, needs: ["kettle"], alone: true }];
  expect(() => orderLots({ lots: 1, stages: alone, resources: { kettle: 1 } })).toThrow("none, for what runs on alone");
  expect(() => orderLots({ lots: 1, stages, resources: { kettle: 0.5, filler: 1 } })).toThrow("resources.kettle");
});
