import { loadScript } from "../in-page/load-script.js";
import type { Answered, AnswerTo, Asked, Question } from "./messages.js";

/** The worker's code as text: a page opened from a folder may start no worker from a file of its own. */
declare global {
  var gelwrightWorker: string | undefined;
}

let worker: Promise<Worker> | undefined;
const waiting = new Map<number, (answer: never) => void>();
let asked = 0;

async function start(): Promise<Worker> {
  await loadScript("worker.js");
  const code = new Blob([globalThis.gelwrightWorker ?? ""], { type: "text/javascript" });
  const started = new Worker(URL.createObjectURL(code));
  started.addEventListener("message", ({ data: { id, ...answer } }: MessageEvent<Answered>) => {
    waiting.get(id)?.(answer as never);
    waiting.delete(id);
  });
  started.addEventListener("error", (event) => {
    throw new Error(event.message);
  });
  return started;
}

/** What comes of a job, or of several. */
export async function ask<Asking extends Question>(asking: Asking): Promise<AnswerTo<Asking>> {
  worker ??= start();
  const one = await worker;
  asked += 1;
  const question: Asked = { ...asking, id: asked };
  return new Promise((resolve) => {
    waiting.set(question.id, resolve);
    one.postMessage(question);
  });
}
