import type { PageView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import type { SetUpShown } from './drawingInputs.ts';
import { Ladders } from './Ladders.tsx';
import { LoadStrip } from './LoadStrip.tsx';
import { Picture } from './Picture.tsx';
import { StandLine } from './StandLine.tsx';
import './machineTab.css';

interface MachineTabProps {
  readonly view: PageView;
  readonly chosen: string | null;
  readonly onChoose: (load: string | null) => void;
  readonly shown: SetUpShown;
  readonly onShow: (shown: SetUpShown) => void;
  readonly onNewLoad: () => void;
}

/** This machine, loaded: drawn to scale, with where each end rests. */
export function MachineTab({ view, chosen, onChoose, shown, onShow, onNewLoad }: MachineTabProps) {
  const [selected, setSelected] = useState<string | null>(null);
  const load = view.loads.find((each) => each.id === chosen) ?? view.loads[0]!;
  return (
    <div className="machine-tab">
      <LoadStrip loads={view.loads} chosen={load.id} onChoose={onChoose} onNew={onNewLoad} />
      <div className="machine-body">
        <div>
          <Picture
            picture={view.picture}
            load={load}
            shown={shown}
            selected={selected}
            onSelect={(id) => setSelected(id === selected ? null : id)}
          />
          <StandLine load={load} shown={shown} onShow={onShow} />
        </div>
        <Ladders view={view} shown={shown} chosen={load.id} />
      </div>
    </div>
  );
}
