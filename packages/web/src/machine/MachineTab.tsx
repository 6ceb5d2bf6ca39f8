import type { PageView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import {
  lazy,
  type ReactNode,
  Suspense,
  useCallback,
  useDeferredValue,
  useEffect,
  useRef,
  useState,
} from 'react';
import { isPageNarrow, usePageWide } from '../app/pageWidth.ts';
import { Announce } from './Announce.tsx';

import { type LadderShown, Ladders } from './Ladders.tsx';
import { LoadStrip } from './LoadStrip.tsx';
import { Narrowing } from './Narrowing.tsx';
import { Picture } from './Picture.tsx';
import { SheetHere } from './SheetHere.tsx';
import { StandLine } from './StandLine.tsx';
import type { MachineSheet, OpenSheet } from './sheets.ts';
import { useMachineKeys } from './useMachineKeys.ts';
import './machineTab.css';

interface MachineTabProps {
  readonly view: PageView;
  readonly chosen: string | null;
  readonly onChoose: (load: string | null) => void;
  readonly shown: SetUpShown;
  readonly onShow: (shown: SetUpShown) => void;
  readonly sheet: MachineSheet | null;
  readonly onSheet: OpenSheet;
  /** What stands beside the machine on a wide page, as long as no sheet lies open; null: the load that is looked at. */
  readonly beside: ReactNode;
}

const LimitList = lazy(() => import('./LimitList.tsx'));

const LOAD: MachineSheet = { kind: 'load' };

/** This machine, loaded: drawn to scale, with where each end rests, and one sheet beside it that changes things. */
export function MachineTab(props: MachineTabProps) {
  const { view, chosen, onChoose, shown, onShow, sheet, onSheet, beside } = props;
  const [ladder, setLadder] = useState<LadderShown>('rear');
  const wide = usePageWide();
  const load = view.loads.find((each) => each.id === chosen) ?? view.loads[0]!;
  /** Figures and ladders first: the picture, which tells the same at a glance, follows in a frame of its own. */
  const drawn = useDeferredValue(load);
  const open = sheet ?? (wide && beside === null ? LOAD : null);
  const picture = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (sheet !== null && !wide) showBelow(picture.current, sheet.kind);
  }, [sheet, wide]);

  const choose = useCallback(
    (id: string | null): void => {
      onChoose(id);
      if (sheet?.kind === 'thing' || sheet?.kind === 'put on') onSheet(null);
      if (sheet?.kind === 'why') onSheet(ofLoad(sheet, id));
    },
    [sheet, onChoose, onSheet],
  );

  useMachineKeys({ view, load, onChoose: choose, onLadder: setLadder });
  return (
    <div className="machine-tab" data-open={open?.kind} data-beside={beside !== null || undefined}>
      <LoadStrip loads={view.loads} chosen={load.id} onChoose={choose} onSheet={onSheet} />
      <div className="machine-picture" ref={picture}>
        <Picture picture={view.picture} load={drawn} shown={shown} sheet={sheet} onSheet={onSheet} />
      </div>
      {open === null && wide && <div className="sheet-here machine-beside">{beside}</div>}
      {open !== null && (
        <SheetHere view={view} load={load} shown={shown} sheet={open} onChoose={choose} onSheet={onSheet} />
      )}
      <StandLine load={load} shown={shown} onShow={onShow} onSheet={onSheet} />
      <Ladders
        view={view}
        load={load}
        shown={shown}
        ladder={ladder}
        onLadder={setLadder}
        onChoose={choose}
        onSheet={onSheet}
      />
      <Narrowing view={view} onSheet={onSheet} />
      <Announce view={view} load={load.id} shown={shown} />
      {!wide && (
        <Suspense>
          <LimitList load={load} onSheet={onSheet} />
        </Suspense>
      )}
    </div>
  );
}

/** The same figure of another load. */
function ofLoad(sheet: Extract<MachineSheet, { kind: 'why' }>, load: string | null): MachineSheet {
  const { question } = sheet;
  if (question.of === 'plan' || question.of === 'fork' || question.of === 'limit') return sheet;
  if (question.of === 'room') return load === null ? LOAD : { kind: 'why', question: { ...question, load } };
  if (question.of === 'stance')
    return { kind: 'why', question: { of: 'stance', asked: { ...question.asked, load } } };
  return { kind: 'why', question: { of: 'stand', asked: { ...question.asked, load } } };
}

/**
 * Moves the page so that the picture stands on top with what opened right below it, where that is not in sight. On a phone, what
 * is long and does not change the load has the page to itself.
 */
function showBelow(picture: HTMLDivElement | null, kind: MachineSheet['kind']): void {
  const sheet = picture?.nextElementSibling?.getBoundingClientRect();
  const strip = picture?.previousElementSibling?.getBoundingClientRect();
  if (picture === null || sheet === undefined || strip === undefined) return;
  const alone = isPageNarrow() && (kind === 'figures' || kind === 'why' || kind === 'stance');
  const inSight = sheet.top >= picture.getBoundingClientRect().bottom - 1 && sheet.top < 0.6 * innerHeight;
  if (alone) scrollTo({ top: sheet.top + scrollY });
  else if (!inSight) scrollTo({ top: strip.bottom + scrollY });
}
