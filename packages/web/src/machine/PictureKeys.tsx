import type { LoadView } from '@sagwright/workbench/page/shapes';
import type { StandFigure } from '@sagwright/workbench/page/whyStand';
import { textBox } from '../drawings/lettering.ts';
import type { LoadMark } from '../drawings/side/axleMarks.ts';
import { type SideViewSize, sideView } from '../drawings/side/sideView.ts';
import type { SideViewInput } from '../drawings/side/sideViewInput.ts';
import { thing, picture as words } from '../words/machine.ts';
import type { SetUpShown } from './drawingInputs.ts';
import type { OpenSheet } from './sheets.ts';
import './pictureKeys.css';

interface PictureKeysProps {
  readonly input: SideViewInput;
  readonly size: SideViewSize;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly onSheet: OpenSheet;
}

/** Keys over the drawing: "Put on …" in the place kept for it, and the axle loads, which open up. */
export function PictureKeys({ input, size, load, shown, onSheet }: PictureKeysProps) {
  const { keyBox, axles } = sideView(input, size);
  const setUp = load.planned === null ? 'asFound' : shown;
  const open = (figure: StandFigure): void =>
    onSheet({ kind: 'why', question: { of: 'stand', asked: { figure, load: load.id, setUp } } });
  const marks =
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
      {marks.map(([figure, mark]) => (
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

/** Around a mass, its ± and its limit, and large enough for a finger. */
function boxOf(mark: LoadMark): React.CSSProperties {
  const boxes = [...mark.texts, mark.limit].filter(({ text }) => text !== '').map(textBox);
  const left = Math.min(...boxes.map(({ x }) => x));
  const right = Math.max(...boxes.map(({ x, width }) => x + width));
  const top = Math.min(...boxes.map(({ y }) => y));
  return { left: left - 6, top: top - 6, width: right - left + 12, height: 64 };
}
