// `tsx tests/side-by-side.ts lint,dead docs,size`: runs npm scripts in lanes beside each other, those of a lane in their order. What
// a script prints follows when it is done, with the seconds that it took; fails if one of them failed.
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

async function lane(scripts: readonly string[]): Promise<boolean> {
  for (const script of scripts) {
    const start = performance.now();
    const { code, output } = await run(script);
    const seconds = Math.round((performance.now() - start) / 1000);
    console.log(`${code === 0 ? "" : "FAILED: "}npm run ${script} (${seconds} s)\n${output.trimEnd()}`);
    if (code !== 0) return false;
  }
  return true;
}

const passed = await Promise.all(process.argv.slice(2).map((scripts) => lane(scripts.split(","))));
if (passed.includes(false)) process.exitCode = 1;
