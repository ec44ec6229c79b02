// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const answerQuestions: Known = [["prepared"], ["changes", "questions"]];
export const comparePlans: Known = [["plans"], ["labels", "documents"]];
export const exposureFor: Known = [["prepared"], ["changes"]];
export const labelFor: Known = [["prepared"], ["changes"]];
export const planSeries: Known = [["prepared"], ["changes"]];
export const remedies: Known = [["prepared", "answer"], ["changes"]];
export const runPrepared: Known = [["prepared"], ["changes"]];
export const sweep: Known = [["prepared", "rows"], ["questions"]];
