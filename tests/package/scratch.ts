import { execFile } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { root } from "../support/rooms.js";

const run = promisify(execFile);

/** A project outside of ours that has installed the packed tarball, as a user would. */
export interface Scratch {
  readonly folder: string;
  /** Removes the project and what it was installed from. */
  remove(): void;
  /** Writes files, by name. */
  write(files: Readonly<Record<string, string>>): void;
  /** Runs a script of the project and reads the JSON that it prints. */
  json(script: string): Promise<unknown>;
}

/** Packs what is built and installs the tarball. Nothing is fetched: dependencies come from our own node_modules. */
export async function installTarball(): Promise<Scratch> {
  refuseStaleBuild();
  const outside = mkdtempSync(join(tmpdir(), "consumer-"));
  const folder = join(outside, "app");
  const quiet = ["--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"];
  await run("npm", ["pack", ...quiet, "--pack-destination", outside], { cwd: root });
  const [tarball = "none"] = readdirSync(outside);
  const local = (name: string) => join(outside, "dependencies", name);
  for (const name of ["convert-units", "valibot"])
    cpSync(`${root}node_modules/${name}`, local(name), { recursive: true, dereference: true });
  const scratch: Scratch = {
    folder,
    remove: () => rmSync(outside, { recursive: true }),
    write(files) {
      for (const [name, text] of Object.entries(files)) {
        mkdirSync(dirname(join(folder, name)), { recursive: true });
        writeFileSync(join(folder, name), text);
      }
    },
    async json(script) {
      const { stdout } = await run(process.execPath, [script], { cwd: folder });
      return JSON.parse(stdout) as unknown;
    },
  };
  scratch.write({
    "package.json": JSON.stringify({
      name: "consumer",
      private: true,
      type: "module",
      dependencies: {
        gelwright: `file:${join(outside, tarball)}`,
        "convert-units": `file:${local("convert-units")}`,
        valibot: `file:${local("valibot")}`,
      },
    }),
  });
  await run("npm", ["install", "--offline", ...quiet], { cwd: folder });
  return scratch;
}

function refuseStaleBuild(): void {
  const sources = readdirSync(`${root}src`, { recursive: true, encoding: "utf8" });
  const newest = Math.max(...sources.map((file) => statSync(`${root}src/${file}`).mtimeMs));
  const built = `${root}dist/index.d.ts`;
  if (!existsSync(built) || statSync(built).mtimeMs < newest)
    throw new Error("dist is older than src: run 'npm run build' before the tests of the package");
}
