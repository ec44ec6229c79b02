import type { Reporter, TestModule, TestRunEndReason } from "vitest/node";

/**
 * Closes a run with one plain line, `N passed, N failed`, whatever the console can show.
 *
 * A file that could not be loaded, or an error outside of any test, counts as a failure: the line
 * never reads better than the exit code.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[], reason: TestRunEndReason): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const count = (state: string) => tests.filter((test) => test.result().state === state).length;
    const broken = modules.filter((module) => module.errors().length > 0).length + errors.length;
    const failed = count("failed") + broken;
    const skipped = count("skipped");
    const line = `${count("passed")} passed, ${failed === 0 && reason === "failed" ? 1 : failed} failed`;
    process.once("exit", () => process.stdout.write(`${line}${skipped > 0 ? `, ${skipped} skipped` : ""}\n`));
  }
}
