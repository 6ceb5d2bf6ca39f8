import type { Ask, Open } from './messages.ts';
import { createDesk } from './planWorker.ts';

/** The worker's ear: one question, one answer. */
const answer = createDesk();

self.onmessage = ({ data }: MessageEvent<Ask | Open>) => {
  self.postMessage(answer(data));
};
