// Bundled for the pages that draw while they are used: loaded when there is something to draw.
import { drawPanel } from "./draw-panel.js";

declare global {
  var gelwrightPlots: { readonly drawPanel: typeof drawPanel };
}

globalThis.gelwrightPlots = { drawPanel };
