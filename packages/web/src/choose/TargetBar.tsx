import type { PageView } from '@sagwright/workbench/page/shapes';
import { targets as words } from '../words/choose.ts';
import type { ChooseEnd } from './end.ts';

interface TargetBarProps {
  readonly view: PageView;
  readonly end: ChooseEnd;
  readonly open: boolean;
  readonly onOpen: () => void;
}

/** Which wanted sags the springs are held against, each load's in words. */
export function TargetBar({ view, end, open, onOpen }: TargetBarProps) {
  const { targets } = view;
  const wanted = view.loads.flatMap((load) => {
    const own = load.id === null ? undefined : view[end].wanted[load.id];
    return own === undefined ? [] : [`${load.letter} ${own.words}`];
  });
  return (
    <section className="target-bar">
      <div>
        <p>
          {words.wanted(end)}: <strong>{targets.name}</strong>
        </p>
        <p className="choose-quiet">{wanted.join(' · ')}</p>
      </div>
      <button type="button" className="key" aria-expanded={open} onClick={onOpen}>
        {words.other}
      </button>
    </section>
  );
}
