import type { PageView } from '@sagwright/workbench/page/shapes';
import { useEffect, useRef, useState } from 'react';
import { travelLadderSentence } from '../drawings/ladder/travelLadder.ts';
import { ladderInput, type SetUpShown } from './drawingInputs.ts';

interface AnnounceProps {
  readonly view: PageView;
  readonly load: string | null;
  readonly shown: SetUpShown;
}

/** How long a change must have settled before it is said [ms], so that steps in a row are said once. */
const SETTLED = 700;

/** Says once per change, aloud only, where both ends rest under the load that is looked at. */
export function Announce({ view, load, shown }: AnnounceProps) {
  const sentence = sentenceOf(view, load, shown);
  const [said, setSaid] = useState('');
  const first = useRef(sentence);
  useEffect(() => {
    if (sentence === first.current) return;
    first.current = '';
    const timer = setTimeout(() => setSaid(sentence), SETTLED);
    return () => clearTimeout(timer);
  }, [sentence]);
  return (
    <p className="spoken" role="status">
      {said}
    </p>
  );
}

function sentenceOf(view: PageView, load: string | null, shown: SetUpShown): string {
  const lines = (['rear', 'front'] as const).map((end) => {
    const input = ladderInput(end, view[end], view.loads, shown, load, 0, view.lengthUnit);
    const lane = input.lanes.find(({ id }) => id === input.chosenId);
    return lane === undefined ? '' : travelLadderSentence(input, lane);
  });
  const stop = view.loads.find(({ id }) => id === load)?.messages.map(({ text }) => text) ?? [];
  return [...stop, ...lines].join(' ');
}
