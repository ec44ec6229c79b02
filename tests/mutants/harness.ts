import { Script } from "node:vm";
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  customMatchers,
  GLOBAL_EXPECT,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";

/** A test as its file states it. */
export interface Collected {
  readonly name: string;
  readonly run: () => unknown;
}

type Body = () => unknown;
type Named = (name: string | { readonly name: string }, body?: Body | object, other?: Body) => void;

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

const expect = Object.assign(
  (value: unknown, message?: string) => chai.expect(value, message),
  chai.expect,
  (globalThis as Record<symbol, object>)[ASYMMETRIC_MATCHERS_OBJECT],
  {
    unreachable: (message?: string): never => chai.assert.fail(message ?? "this is never to be reached"),
    fail: chai.assert.fail,
  },
);
// The matchers look for the expectation that is in force here.
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, writable: true, configurable: true });
const held = expect as unknown as Parameters<typeof setState>[1];
setState({ ...getState(held), assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, held);
(held as unknown as { extend(of: object, matchers: object): void }).extend(expect, customMatchers);

/** What stands in for `%s`, `%i` and `$name` in a title does not matter here: the place in the file tells tests apart. */
function eachOf(named: Named) {
  return (rows: readonly unknown[]) =>
    (name: string, body: (...row: readonly unknown[]) => unknown): void => {
      for (const [i, row] of rows.entries())
        named(`${name} [${i}]`, () => (Array.isArray(row) ? body(...row) : body(row)));
    };
}

/** What a file of tests imports from `vitest`, and the tests that it then states. */
export function collector(): { readonly vitest: object; readonly tests: readonly Collected[] } {
  const tests: Collected[] = [];
  let scope: { readonly name: string; readonly before: Body[] } = { name: "", before: [] };
  const test: Named = (name, body, other) => {
    const { name: above, before } = scope;
    const run = [body, other].find((one): one is Body => typeof one === "function");
    if (!run) return;
    tests.push({
      name: `${above}${typeof name === "string" ? name : name.name}`,
      run: () => {
        // Once, before the first test of its scope.
        for (const first of before.splice(0)) first();
        return run();
      },
    });
  };
  const describe: Named = (name, body) => {
    const above = scope;
    scope = { name: `${above.name}${String(name)} > `, before: above.before };
    if (typeof body === "function") (body as Body)();
    scope = above;
  };
  const skip = (): void => undefined;
  const oneTest = Object.assign(test, { each: eachOf(test), skipIf: (no: boolean) => (no ? skip : test), skip });
  const proxy: object = new Proxy(() => proxy, { get: () => proxy });
  const vitest = {
    expect,
    test: oneTest,
    it: oneTest,
    describe: Object.assign(describe, { each: eachOf(describe), skip }),
    beforeAll: (body: Body) => scope.before.push(body),
    afterAll: skip,
    beforeEach: skip,
    afterEach: skip,
    expectTypeOf: () => proxy,
  };
  return { vitest, tests };
}

const box: { run: () => unknown } = { run: () => undefined };
(globalThis as { __boxed?: typeof box }).__boxed = box;
const call = new Script("__boxed.run()");

/** Calls a function, and ends it with an error if it takes longer than a number of milliseconds. */
export async function within(milliseconds: number, run: () => unknown): Promise<void> {
  box.run = run;
  await (call.runInThisContext({ timeout: Math.max(1, Math.ceil(milliseconds)) }) as unknown);
}
