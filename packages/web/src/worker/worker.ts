import type { Ask } from './messages.ts';
import { answerTo } from './planWorker.ts';

/** The worker's ear: one question, one answer. */
self.onmessage = ({ data }: MessageEvent<Ask>) => {
  self.postMessage(answerTo(data));
};
