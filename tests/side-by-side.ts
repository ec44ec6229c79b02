// `tsx tests/side-by-side.ts build,docs lint,after:build,size`: runs npm scripts in lanes beside each other, those of a lane in
// their order; `after:build` waits until that script of another lane is done. What a script prints follows when it is done,
// with the seconds that it took; fails if one of them failed.
import { spawn } from "node:child_process";

interface Done {
  readonly code: number;
  readonly output: string;
}

function run(script: string): Promise<Done> {
  return new Promise((done) => {
    const child = spawn("npm", ["run", "--silent", script], { stdio: ["ignore", "pipe", "pipe"] });
    const said: Buffer[] = [];
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (some: Buffer) => said.push(some));
    child.on("close", (code) => done({ code: code ?? 1, output: Buffer.concat(said).toString() }));
  });
}

const lanes = process.argv.slice(2).map((scripts) => scripts.split(","));
/** Whether each script passed, once that is known; one that its lane never came to did not. */
const passed = new Map(
  lanes.flat().map((script) => {
    let settle: (passed: boolean) => void = () => {};
    const known = new Promise<boolean>((done) => {
      settle = done;
    });
    return [script, { known, settle }] as const;
  }),
);

async function isPassed(script: string): Promise<boolean> {
  const [, other] = /^after:(.*)/.exec(script) ?? [];
  if (other !== undefined) return (await passed.get(other)?.known) ?? false;
  const start = performance.now();
  const { code, output } = await run(script);
  const seconds = Math.round((performance.now() - start) / 1000);
  console.log(`${code === 0 ? "" : "FAILED: "}npm run ${script} (${seconds} s)\n${output.trimEnd()}`);
  return code === 0;
}

async function walk(lane: readonly string[]): Promise<void> {
  let goesOn = true;
  for (const script of lane) {
    goesOn = goesOn && (await isPassed(script));
    passed.get(script)?.settle(goesOn);
  }
  if (!goesOn) process.exitCode = 1;
}

await Promise.all(lanes.map(walk));
