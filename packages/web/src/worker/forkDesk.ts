/** All that only the forces of the fork need: fetched when they are looked at first. */
import { whyFork } from '@sagwright/workbench/fork/whyFork';
import { forkView } from '@sagwright/workbench/page/forkView';

export const forkDesk = { forkView, whyFork } as const;
