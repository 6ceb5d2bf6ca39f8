import type { PageView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { memo } from 'react';
import { SaidOnce } from '../app/SaidOnce.tsx';
import { travelLadderSentence } from '../drawings/ladder/travelLadder.ts';
import { ladderInput } from './drawingInputs.ts';

interface AnnounceProps {
  readonly view: PageView;
  readonly load: string | null;
  readonly shown: SetUpShown;
}

/** Says once per change, aloud only, where both ends rest under the load that is looked at. */
export const Announce = memo(function Announce({ view, load, shown }: AnnounceProps) {
  return <SaidOnce sentence={sentenceOf(view, load, shown)} />;
});

function sentenceOf(view: PageView, load: string | null, shown: SetUpShown): string {
  const lines = (['rear', 'front'] as const).map((end) => {
    const input = ladderInput(end, view[end], view.loads, shown, load, 0, view.lengthUnit);
    const lane = input.lanes.find(({ id }) => id === input.chosenId);
    return lane === undefined ? '' : travelLadderSentence(input, lane);
  });
  const stop = view.loads.find(({ id }) => id === load)?.messages.map(({ text }) => text) ?? [];
  return [...stop, ...lines].join(' ');
}
