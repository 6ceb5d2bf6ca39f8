import type { Ask, Open } from './messages.ts';
import { createDesk } from './planWorker.ts';

/** The worker's ear. Between two answers it hears what came meanwhile. */
const desk = createDesk(
  (answer) => self.postMessage(answer),
  () => new Promise((heard) => setTimeout(heard)),
);

self.onmessage = ({ data }: MessageEvent<Ask | Open>) => void desk(data);
