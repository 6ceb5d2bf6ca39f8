import type { LoadView } from '@sagwright/workbench/page/shapes';
import type { StandFigure } from '@sagwright/workbench/page/whyStand';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { type LoadMark, wordsBox } from '../drawings/side/axleMarks.ts';
import type { SideViewMarks } from '../drawings/side/sideView.ts';
import { thing, picture as words } from '../words/machine.ts';

import type { OpenSheet } from './sheets.ts';
import './pictureKeys.css';

interface PictureKeysProps {
  readonly marks: SideViewMarks;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly onSheet: OpenSheet;
}

/** Keys over the drawing: "Put on …" in the place kept for it, and the axle loads, which open up. */
export function PictureKeys({ marks, load, shown, onSheet }: PictureKeysProps) {
  const { keyBox, axles } = marks;
  const setUp = load.planned === null ? 'asFound' : shown;
  const open = (figure: StandFigure): void =>
    onSheet({ kind: 'why', question: { of: 'stand', asked: { figure, load: load.id, setUp } } });
  const loads =
    axles === null
      ? []
      : ([
          ['rear load', axles.rear],
          ['whole load', axles.whole],
          ['front load', axles.front],
        ] as const);
  return (
    <>
      {keyBox !== null && load.id !== null && !load.weighed && (
        <button
          type="button"
          className="picture-put-on"
          style={{ left: keyBox.x, top: keyBox.y, width: keyBox.width, height: keyBox.height }}
          onClick={() => onSheet({ kind: 'put on' })}
        >
          <b>{thing.putOn}</b>
          <span>{thing.whoWhat}</span>
        </button>
      )}
      {loads.map(([figure, mark]) => (
        <button
          key={figure}
          type="button"
          className="picture-open"
          style={boxOf(mark)}
          aria-label={words.openLoad[figure]}
          onClick={() => open(figure)}
        />
      ))}
    </>
  );
}

/** Around a mass, its ± and its limit, and large enough for a finger: 64 px each way, and at most touching its neighbour. */
function boxOf(mark: LoadMark): React.CSSProperties {
  const { x, y, width, height } = wordsBox([...mark.texts, ...mark.limit]);
  const wide = Math.max(64, width + 2 * BESIDE);
  return {
    left: Math.round(x + width / 2 - wide / 2),
    top: Math.round(y - 6),
    width: wide,
    height: Math.max(64, height + 8),
  };
}

const BESIDE = 4;
