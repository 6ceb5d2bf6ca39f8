import type { LoadView, PictureView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { memo, useMemo } from 'react';
import { useSame } from '../app/useSame.ts';
import { useWidth } from '../app/useWidth.ts';
import { SideView } from '../drawings/side/SideView.tsx';
import { sideView } from '../drawings/side/sideView.ts';
import { sideViewInput } from './drawingInputs.ts';
import { PictureKeys } from './PictureKeys.tsx';
import type { MachineSheet, OpenSheet } from './sheets.ts';

interface PictureProps {
  readonly picture: PictureView;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly sheet: MachineSheet | null;
  readonly onSheet: OpenSheet;
}

/** The machine drawn to scale with the load on it; tags open things, axle loads open up. */
export const Picture = memo(function Picture({ picture, load, shown, sheet, onSheet }: PictureProps) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const selected = sheet?.kind === 'thing' ? sheet.id : null;
  const height = pictureHeight(width);
  const input = useMemo(
    () => sideViewInput(picture, load, shown, selected),
    [picture, load, shown, selected],
  );
  const marks = useSame(useMemo(() => sideView(input, { width, height }), [input, width, height]));
  const select = (id: string): void => onSheet(id === selected ? null : { kind: 'thing', id });
  return (
    <div ref={ref} className="picture" style={{ minBlockSize: height }}>
      {width > 0 && (
        <>
          <SideView input={input} marks={marks} onSelect={select} />
          <PictureKeys marks={marks} load={load} shown={shown} onSheet={onSheet} />
        </>
      )}
    </div>
  );
});

/** High enough for the tags, never so high that the ladders are lost on a tablet; a phone has no tags. */
function pictureHeight(width: number): number {
  const high = Math.max(LEAST_WITH_TAGS, Math.min(600, 0.41 * window.innerHeight));
  return Math.round(
    width < 560 ? Math.min(400, 0.9 * width) : Math.min(high, Math.max(LEAST_WITH_TAGS, 0.66 * width)),
  );
}

/** Three tags under each other beside the picture, below the row on top: what is behind is then tagged from behind. */
const LEAST_WITH_TAGS = 440;
