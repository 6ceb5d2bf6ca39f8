import type { AttitudeView, LoadView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { memo } from 'react';
import { loads, setUps, sheetKeys, attitude as words } from '../words/machine.ts';
import { whole } from '../words/whole.ts';
import { standShown } from './drawingInputs.ts';
import type { OpenSheet } from './sheets.ts';
import '../fields/key.css';
import './standLine.css';

interface StandLineProps {
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly onShow: (shown: SetUpShown) => void;
  readonly onSheet: OpenSheet;
}

/** What must be said of this load, which set-up is shown, and how the machine stands in it: as changes where there are some. */
export const StandLine = memo(function StandLine({ load, shown, onShow, onSheet }: StandLineProps) {
  const stand = standShown(load, shown);
  const setUp = stand === load.planned ? 'planned' : 'asFound';
  return (
    <section className="stand-line" aria-label={words.label}>
      <div className="stand-line-says">
        <div className="stand-line-words">
          <h2 className="stand-line-title">
            {load.letter === null ? loads.alone : loads.spoken(load.letter, load.name)}
          </h2>
          <Messages load={load} why={stand.why} />
        </div>
        <div className="stand-line-keys">
          <button type="button" className="key stand-line-load" onClick={() => onSheet({ kind: 'load' })}>
            {load.letter === null ? sheetKeys.alone : sheetKeys.load(load.letter)}
          </button>
          <button type="button" className="key" onClick={() => onSheet({ kind: 'stance' })}>
            {sheetKeys.stance}
          </button>
          <button type="button" className="key" onClick={() => onSheet({ kind: 'figures', path: null })}>
            {sheetKeys.figures}
          </button>
        </div>
      </div>
      <div className="stand-line-stand">
        {load.id !== null && (
          <div className="stand-line-shown">
            <fieldset className="stand-line-set-ups" aria-label={setUps.label}>
              {(['asFound', 'planned'] as const).map((each) => (
                <button
                  key={each}
                  type="button"
                  aria-pressed={setUp === each}
                  disabled={each === 'planned' && load.planned === null}
                  onClick={() => onShow(each)}
                >
                  {setUps[each]}
                </button>
              ))}
            </fieldset>
            {stand.attitude.some(({ change }) => change !== null) && <p>{words.changes}</p>}
          </div>
        )}
        <div className="stand-line-attitude">
          {stand.attitude.map((part) => (
            <AttitudeKey
              key={part.name}
              part={part}
              onOpen={() =>
                onSheet({
                  kind: 'why',
                  question: { of: 'stand', asked: { figure: part.name, load: load.id, setUp } },
                })
              }
            />
          ))}
        </div>
      </div>
    </section>
  );
});

/** What must be said of a load; that nothing is planned for it, where nothing else says why. */
function Messages({ load, why }: { readonly load: LoadView; readonly why: string | null }) {
  if (load.messages.length > 0) {
    return load.messages.map((message) => (
      <p key={message.text} className="stand-line-message" data-tone={message.tone}>
        {whole(message.text)}
      </p>
    ));
  }
  return (
    <>
      {why !== null && (
        <p className="stand-line-message" data-tone="stop">
          {words.why(why)}
        </p>
      )}
      {load.id !== null && load.planned === null && <p className="stand-line-none">{setUps.none}</p>}
    </>
  );
}

/** A part of the attitude with its ±, and what changed against as found. It opens up. */
function AttitudeKey({ part, onOpen }: { readonly part: AttitudeView; readonly onOpen: () => void }) {
  const { name, figure, change } = part;
  return (
    <button type="button" className="stand-line-part" onClick={onOpen}>
      <span className="stand-line-name">{words.name[name]}</span>
      <span>
        <span className="stand-line-figure">
          <b>{figure.value}</b>
          {words.unit(figure.unit)}
        </span>{' '}
        {figure.plusMinus !== null && <span className="stand-line-doubt">± {figure.plusMinus}</span>}
      </span>
      {change !== null && <span className="stand-line-change">{words.change(change)}</span>}
    </button>
  );
}
