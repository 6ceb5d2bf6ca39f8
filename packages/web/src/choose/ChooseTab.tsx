import type { PageView } from '@sagwright/workbench/page/shapes';
import { lazy, Suspense, useState } from 'react';
import { SaidOnce } from '../app/SaidOnce.tsx';
import { ChoosePages } from './ChoosePages.tsx';
import { EndPage } from './EndPage.tsx';
import type { ChoosePage } from './end.ts';
import { usePageTurns } from './usePageTurns.ts';
import '../fields/key.css';
import './chooseTab.css';

const WantedPage = lazy(() => import('./WantedPage.tsx'));

interface ChooseTabProps {
  readonly view: PageView;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
}

/** What would be better: the springs of each end against what its adjuster reaches, and the sag they are held against. */
export default function ChooseTab({ view, onField }: ChooseTabProps) {
  const [page, setPage] = useState<ChoosePage>('rear');
  usePageTurns(page, setPage);
  return (
    <div className="choose-tab">
      <ChoosePages view={view} page={page} onPage={setPage} />
      {page === 'wanted' ? (
        <Suspense>
          <WantedPage view={view} />
        </Suspense>
      ) : (
        <EndPage key={page} end={page} view={view} onWanted={() => setPage('wanted')} onField={onField} />
      )}
      <SaidOnce sentence={`${view.rear.headline} ${view.front.headline}`} />
    </div>
  );
}
