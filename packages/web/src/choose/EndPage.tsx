import type { PageView } from '@sagwright/workbench/page/shapes';
import { ChooseAnswer } from './ChooseAnswer.tsx';
import type { ChooseEnd } from './end.ts';
import { ShockSays } from './ShockSays.tsx';
import { SpringList } from './SpringList.tsx';
import { WantedLine } from './WantedLine.tsx';

export interface EndPageProps {
  readonly end: ChooseEnd;
  readonly view: PageView;
  readonly onWanted: () => void;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
}

/** The springs of one end: what is wanted, what is suggested, and every one of them. */
export function EndPage({ end, view, onWanted, onField }: EndPageProps) {
  return (
    <>
      <WantedLine view={view} end={end} onChange={onWanted} />
      <ChooseAnswer end={end} here={view[end]} onField={onField} />
      {end === 'rear' && <ShockSays shock={view.shock} onField={onField} />}
      {view[end].springs.length > 0 && <SpringList end={end} view={view} onField={onField} />}
    </>
  );
}
