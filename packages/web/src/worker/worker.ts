import type { ToWorker } from './messages.ts';
import { createDesk } from './planWorker.ts';

/** The worker's ear. Between two answers it hears what came meanwhile; what it throws reaches the page as the worker's `error`. */
const desk = createDesk(
  (answer) => self.postMessage(answer),
  () => new Promise((heard) => setTimeout(heard)),
);

self.onmessage = ({ data }: MessageEvent<ToWorker>) =>
  desk(data).catch((fault: unknown) => setTimeout(() => fail(fault)));

function fail(fault: unknown): never {
  throw fault;
}
