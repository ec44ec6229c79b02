import { existsSync } from "node:fs";

/** Where Chromium stands on this machine, if it does; `CHROMIUM` names another place. Nothing is downloaded. */
export const chromiumPath: string | undefined = [
  process.env["CHROMIUM"],
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
].find((path) => path !== undefined && existsSync(path));
