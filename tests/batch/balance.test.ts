import { chooseBalance } from "gelwright/batch";
import { expect, test } from "vitest";

const balances = [
  { name: "floor", increment: 0.02, capacity: 150, minimumWeight: 5 },
  { name: "bench", increment: 0.001, capacity: 6, minimumWeight: 0.05 },
  { name: "fine", increment: 0.00001, capacity: 0.2, minimumWeight: 0.002 },
];
const choose = (mass: number, tare = 0) => {
  const { balance, portions } = chooseBalance({ name: "wax", mass, balances, tare });
  return [balance.name, portions];
};

test("the finest balance that can carry the mass is taken", () => {
  expect(choose(0.002)).toEqual(["fine", 1]);
  expect(choose(0.2)).toEqual(["fine", 1]);
  expect(choose(0.3)).toEqual(["bench", 1]);
  expect(choose(5.5)).toEqual(["bench", 1]);
  expect(choose(150)).toEqual(["floor", 1]);
});

test("the container counts against the capacity, and not towards the minimum weight", () => {
  expect(choose(5.5, 0.6)).toEqual(["floor", 1]);
  expect(choose(0.15, 0.1)).toEqual(["bench", 1]);
  expect(() => choose(0.001, 0.1)).toThrow("wax: found 0.001 kg, which no balance can weigh");
});

test("a mass above every capacity is weighed in the fewest equal portions", () => {
  expect(choose(151)).toEqual(["floor", 2]);
  expect(choose(600)).toEqual(["floor", 4]);
});

test("a mass between two balances is weighed in portions on the smaller", () => {
  const apart = [
    { name: "small", increment: 0.001, capacity: 2, minimumWeight: 0.05 },
    { name: "large", increment: 0.1, capacity: 150, minimumWeight: 20 },
  ];
  expect(chooseBalance({ name: "wax", mass: 3, balances: apart })).toMatchObject({
    balance: { name: "small" },
    portions: 2,
  });
});

test("a mass below every minimum weight is refused with the line, the balances and the remedy", () => {
  expect(() => choose(0.0001)).toThrow(
    "wax: found 0.0001 kg, which no balance can weigh (floor: 5 to 150 kg, bench: 0.05 to 6 kg, fine: 0.002 to 0.2 kg), " +
      "expected a mass within one of them: a larger batch, another balance, or a premix that carries this line",
  );
});

test("a thousand portions are no way to weigh", () => {
  const [bench] = balances.filter(({ name }) => name === "bench");
  expect(() => chooseBalance({ name: "oil", mass: 6100, balances: bench ? [bench] : [] })).toThrow(
    "no balance can weigh",
  );
});
