import type { LoadView, SpringView } from '@sagwright/workbench/page/shapes';
import { AsTable } from '../drawings/AsTable.tsx';
import { ReachLine } from '../drawings/reach/ReachLine.tsx';
import type { ReachInput } from '../drawings/reach/reachInput.ts';
import { reachLineTable } from '../drawings/reach/reachLine.ts';
import { choose as words } from '../words/choose.ts';
import type { ChooseEnd } from './end.ts';
import { placeWords } from './reachInputs.ts';
import { SpringHands } from './SpringHands.tsx';
import { SpringReasons } from './SpringReasons.tsx';
import './springRow.css';

interface SpringRowProps {
  readonly end: ChooseEnd;
  readonly spring: SpringView;
  readonly loads: readonly LoadView[];
  /** Null where the end has nothing to set. */
  readonly reach: ReachInput | null;
  /** Of the drawing. */
  readonly width: number;
  readonly planned: boolean;
  /** Picked by a person. */
  readonly picked: boolean;
  readonly suggested: boolean;
  readonly open: boolean;
  readonly onOpen: () => void;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
  /** True: plan this one; false: leave it to the suggestion. */
  readonly onPick: (yes: boolean) => void;
}

/** One spring: its rate, where its adjuster must stand for each load, and what speaks for and against it. */
export function SpringRow(props: SpringRowProps) {
  const { end, spring, loads, reach, width, planned, picked, suggested, open } = props;
  const { onOpen, onField, onPick } = props;
  return (
    <article className="spring-row" data-planned={planned || undefined} aria-label={spring.name}>
      <div className="spring-row-head">
        <p className="spring-row-rate">
          <strong>{spring.rate.value}</strong> {spring.rate.unit}
        </p>
        <h3>{spring.name}</h3>
        {spring.typed !== null && <p className="choose-quiet">{words.typed(spring.typed)}</p>}
        <p className="choose-quiet">{placeWords(spring)}</p>
        {(suggested || planned) && (
          <p className="spring-row-marks">
            {suggested && <span>{words.suggested}</span>}
            {planned && <span>{words.planned}</span>}
          </p>
        )}
      </div>
      <div className="spring-row-body">
        {reach !== null && width > 0 && <ReachLine input={reach} width={width} />}
        <p className="spring-row-verdict">{spring.verdict}</p>
        {open && (
          <>
            <div className="spring-reasons">
              <SpringReasons spring={spring} />
              <SpringHands end={end} spring={spring} loads={loads} onField={onField} />
            </div>
            {reach !== null && <AsTable table={reachLineTable(reach)} />}
          </>
        )}
      </div>
      <div className="spring-row-keys">
        <button
          type="button"
          className="key"
          aria-expanded={open}
          aria-label={open ? words.fold(spring.name) : words.open(spring.name)}
          onClick={onOpen}
        >
          {open ? '−' : '+'}
        </button>
        {picked ? (
          <button type="button" className="key" onClick={() => onPick(false)}>
            {words.backToSuggested}
          </button>
        ) : (
          !planned && (
            <button type="button" className="key" data-do onClick={() => onPick(true)}>
              {words.planThis}
            </button>
          )
        )}
      </div>
    </article>
  );
}
