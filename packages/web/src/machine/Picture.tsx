import type { LoadView, PictureView } from '@sagwright/workbench/page/shapes';
import { useWidth } from '../app/useWidth.ts';
import { AsTable } from '../drawings/AsTable.tsx';
import { SideView } from '../drawings/side/SideView.tsx';
import { sideViewTable } from '../drawings/side/sideView.ts';
import { type SetUpShown, sideViewInput } from './drawingInputs.ts';

interface PictureProps {
  readonly picture: PictureView;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly selected: string | null;
  readonly onSelect: (id: string) => void;
}

/** The machine drawn to scale with the load on it. */
export function Picture({ picture, load, shown, selected, onSelect }: PictureProps) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const input = sideViewInput(picture, load, shown, selected);
  return (
    <div className="machine-picture" ref={ref}>
      {width > 0 && (
        <SideView input={input} size={{ width, height: pictureHeight(width) }} onSelect={onSelect} />
      )}
      <AsTable table={sideViewTable(input)} />
    </div>
  );
}

/** High enough for the tags on a phone, never so high that the ladders are lost on a tablet. */
function pictureHeight(width: number): number {
  return Math.round(Math.min(620, Math.max(440, width * 0.66)));
}
