import type { Travel } from '@sagwright/records/schema/machine';
import type { LoadView, PageView } from '@sagwright/workbench/page/shapes';
import { lazy, Suspense } from 'react';
import type { OpenSheet } from '../sheets.ts';
import { FoundFork } from './FoundFork.tsx';
import { NewLimits } from './NewLimits.tsx';
import { NewPoint } from './NewPoint.tsx';
import { NewSpring } from './NewSpring.tsx';
import { RaisedWheel } from './RaisedWheel.tsx';

const ForkForces = lazy(() => import('./ForkForces.tsx'));
const RearMotion = lazy(() => import('./RearMotion.tsx'));
const TapeGuide = lazy(() => import('./TapeGuide.tsx'));

interface BesideFieldsProps {
  /** Id of the group in sight. */
  readonly group: string;
  readonly travel: Travel;
  readonly view: PageView | null;
  readonly load: LoadView | null;
  readonly onSheet: OpenSheet;
}

/** What a group has beside its fields: what its figures come to, a guide to read them by, keys that add to it. */
export function BesideFields({ group, travel, view, load, onSheet }: BesideFieldsProps) {
  switch (group) {
    case 'rear':
      return (
        <>
          {(travel.kind === 'direct' || travel.kind === 'linkage') && (
            <Suspense>
              <TapeGuide key={travel.kind} travel={travel} />
            </Suspense>
          )}
          {view !== null && load !== null && (
            <Suspense>
              <RearMotion loads={view.loads} load={load} />
            </Suspense>
          )}
        </>
      );
    case 'front':
      return (
        <Suspense>
          <ForkForces onSheet={onSheet} />
        </Suspense>
      );
    case 'found':
      return <FoundFork />;
    case 'springs':
      return <NewSpring />;
    case 'stance':
      return <NewPoint />;
    case 'limits':
      return <NewLimits />;
    case 'scales':
      return <RaisedWheel />;
    default:
      return null;
  }
}
