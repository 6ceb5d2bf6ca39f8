import type { EndView, PageView, SpringView } from '@sagwright/workbench/page/shapes';
import { AsTable } from '../drawings/AsTable.tsx';
import type { ReachInput } from '../drawings/reach/reachInput.ts';
import { reachLineTable } from '../drawings/reach/reachLine.ts';
import { choose as words } from '../words/choose.ts';
import { together } from '../words/fields.ts';
import type { ChooseEnd } from './end.ts';
import { SpringHands } from './SpringHands.tsx';
import { SpringReasons } from './SpringReasons.tsx';
import './springDetails.css';

interface SpringDetailsProps {
  readonly end: ChooseEnd;
  readonly here: EndView;
  readonly spring: SpringView;
  readonly view: PageView;
  /** Null where the end has nothing to set. */
  readonly reach: ReachInput | null;
  readonly planned: boolean;
  readonly suggested: boolean;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
  /** True: plan this one; false: leave it to the suggestion. */
  readonly onPick: (yes: boolean) => void;
}

/** What opens under a spring: why it is suggested and what flips that, what speaks for and against it, what hands set. */
export function SpringDetails(props: SpringDetailsProps) {
  const { end, here, spring, view, reach, planned, suggested, onField, onPick } = props;
  const [why, ...more] = here.suggestion;
  return (
    <div className="spring-details">
      {suggested && why !== undefined && (
        <div className="spring-suggestion">
          <p>
            <strong>{words.suggestedWhy}</strong> {together(why)}
          </p>
          {more.map((sentence) => (
            <p key={sentence}>{together(sentence)}</p>
          ))}
        </div>
      )}
      {spring.about.map((sentence) => (
        <p key={sentence}>{together(sentence)}</p>
      ))}
      <SpringReasons spring={spring} />
      <SpringHands end={end} spring={spring} view={view} onField={onField} />
      <div className="spring-details-foot">
        {reach !== null && <AsTable table={() => reachLineTable(reach)} of={spring.name} />}
        {planned && here.plannedBy === 'choice' ? (
          <button type="button" className="key" onClick={() => onPick(false)}>
            {words.backToSuggested}
          </button>
        ) : (
          <button type="button" className="key" data-do={!planned || undefined} onClick={() => onPick(true)}>
            {planned && suggested ? words.holdThis : words.planThis}
          </button>
        )}
      </div>
    </div>
  );
}
