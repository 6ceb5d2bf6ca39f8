import { useCallback } from 'react';
import { useTable } from '../../app/useJob.ts';
import { useTold } from '../../app/useTold.ts';
import { loads } from '../../words/machine.ts';
import { stance as words } from '../../words/stance.ts';
import { SheetFrame } from '../SheetFrame.tsx';
import type { SheetProps } from '../sheets.ts';
import { KeepPart } from './KeepPart.tsx';
import { OtherwisePart } from './OtherwisePart.tsx';
import { RoadPart } from './RoadPart.tsx';
import { StanceTable } from './StanceTable.tsx';
import '../openKey.css';
import './stanceSheet.css';

/** How a load stands and steers, as found against planned; what keeps it so; how it is braked and driven. */
export default function StanceSheet({ load, onSheet }: Pick<SheetProps, 'load' | 'onSheet'>) {
  const { stance } = useTable();
  const view = useTold(useCallback(() => stance(load.id), [stance, load.id]));
  const name = load.letter === null ? words.alone : loads.spoken(load.letter, load.name);
  return (
    <SheetFrame title={words.title} note={name} onClose={() => onSheet(null)}>
      {view === null || typeof view === 'string' ? (
        <p>{view ?? words.working}</p>
      ) : (
        <>
          <StanceTable view={view} load={load.id} onSheet={onSheet} />
          {load.id !== null && <KeepPart view={view} />}
          <OtherwisePart view={view} />
          <RoadPart view={view} />
        </>
      )}
    </SheetFrame>
  );
}
