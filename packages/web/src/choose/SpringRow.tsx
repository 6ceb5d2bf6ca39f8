import type { EndView, SpringView } from '@sagwright/workbench/page/shapes';
import { memo, type ReactNode } from 'react';
import { ReachLine } from '../drawings/reach/ReachLine.tsx';
import type { ReachInput } from '../drawings/reach/reachInput.ts';
import { choose as words } from '../words/choose.ts';
import { springPlace } from './springPlace.ts';
import './springRow.css';

interface SpringRowProps {
  readonly spring: SpringView;
  /** Null where the end has nothing to set. */
  readonly reach: ReachInput | null;
  /** Of the drawing. */
  readonly width: number;
  /** Who plans it; null where it is not planned. */
  readonly planned: EndView['plannedBy'] | null;
  readonly suggested: boolean;
  readonly open: boolean;
  readonly onOpen: (id: string, yes: boolean) => void;
  /** What opens under it, where it is open. */
  readonly details: ReactNode;
}

/** One spring: its rate, where its adjuster must stand for each load, its verdict; opened, all that speaks for and against it. */
export const SpringRow = memo(function SpringRow(props: SpringRowProps) {
  const { spring, reach, width, planned, suggested, open, onOpen, details } = props;
  const { id, name, rate, verdict, lanes } = spring;
  return (
    <article
      className="spring-row"
      id={springPlace(id)}
      data-planned={planned !== null || undefined}
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
            {planned !== null && <span>{words.plannedBy[planned]}</span>}
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
          onClick={() => onOpen(id, !open)}
        >
          <span>{verdict}</span>
        </button>
      </div>
      {details}
    </article>
  );
});

/** What stands under a spring's name: its rate as typed, where it is, what is special about it. */
function aboutLines({ typed, workedOut, rate, fitted, where, atHand }: SpringView): readonly string[] {
  return [
    ...(typed === null || typed === `${Number(rate.value)} ${rate.unit}` ? [] : [words.typed(typed)]),
    ...(workedOut === null ? [] : [workedOut]),
    ...(fitted ? [words.fitted] : where === null ? [] : [where]),
    ...(atHand || fitted ? [] : [words.notAtHand]),
  ];
}
