import type { SpringView } from '@sagwright/workbench/page/shapes';
import { ReachLine } from '../drawings/reach/ReachLine.tsx';
import { choose as words } from '../words/choose.ts';
import { SpringDetails, type SpringDetailsProps } from './SpringDetails.tsx';
import { springPlace } from './springPlace.ts';
import './springRow.css';

interface SpringRowProps extends SpringDetailsProps {
  /** Of the drawing. */
  readonly width: number;
  readonly open: boolean;
  readonly onOpen: () => void;
}

/** One spring: its rate, where its adjuster must stand for each load, its verdict; opened, all that speaks for and against it. */
export function SpringRow(props: SpringRowProps) {
  const { here, spring, reach, width, planned, suggested, open, onOpen } = props;
  const { id, name, rate, verdict, lanes } = spring;
  return (
    <article
      className="spring-row"
      id={springPlace(id)}
      data-planned={planned || undefined}
      data-suggested={suggested || undefined}
      aria-label={name}
    >
      <div className="spring-row-top">
        <div className="spring-row-head">
          <p className="spring-row-rate">
            <strong>{rate.value}</strong> {rate.unit}
          </p>
          <h3>{name}</h3>
          <p className="spring-row-about">
            {aboutLines(spring).map((line) => (
              <span key={line}>{line}</span>
            ))}
          </p>
          <p className="spring-row-marks">
            {suggested && <span>{words.suggested}</span>}
            {planned && <span>{words.plannedBy[here.plannedBy]}</span>}
          </p>
        </div>
        {reach !== null && width > 0 ? (
          <div className="spring-row-reach">
            <ReachLine input={reach} width={width} />
          </div>
        ) : (
          <ul className="spring-row-words">
            {lanes.map((lane) => (
              <li key={lane.load}>
                <b>{lane.letter}</b> {lane.words}
              </li>
            ))}
          </ul>
        )}
        <button
          type="button"
          className="spring-row-verdict"
          aria-expanded={open}
          aria-label={`${open ? words.fold(name) : words.open(name)}: ${verdict}`}
          onClick={onOpen}
        >
          <span>{verdict}</span>
        </button>
      </div>
      {open && <SpringDetails {...props} />}
    </article>
  );
}

/** What stands under a spring's name: its rate as typed, where it is, what is special about it. */
function aboutLines({ typed, rate, fitted, where, atHand }: SpringView): readonly string[] {
  return [
    ...(typed === null || typed === `${Number(rate.value)} ${rate.unit}` ? [] : [words.typed(typed)]),
    ...(fitted ? [words.fitted] : where === null ? [] : [where]),
    ...(atHand || fitted ? [] : [words.notAtHand]),
  ];
}
