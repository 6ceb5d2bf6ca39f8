import type { PageView } from '@sagwright/workbench/page/shapes';
import { targets as words } from '../words/targets.ts';
import type { ChooseEnd } from './end.ts';
import { wantedGroups } from './wantedGroups.ts';
import './wantedLine.css';

interface WantedLineProps {
  readonly view: PageView;
  readonly end: ChooseEnd;
  readonly onChange: () => void;
}

/** Which sag the springs are held against: the set's name, and what it wants of which loads. */
export function WantedLine({ view, end, onChange }: WantedLineProps) {
  const groups = wantedGroups(view.loads, view[end].wanted);
  return (
    <section className="wanted-line" aria-label={words.wanted(end)}>
      <div>
        <p className="wanted-line-set">
          {words.wanted(end)}: <strong>{view.targets.name}</strong>
        </p>
        <ul>
          {groups.map(({ letters, range }) => (
            <li key={letters.join()}>
              <b>{letters.join('\u2009·\u2009')}</b> {range}
            </li>
          ))}
          {groups.length > 0 && <li>{words.ofTravel(view[end].travelMaxWords, view.lengthUnit)}</li>}
        </ul>
      </div>
      <button type="button" className="key" onClick={onChange}>
        {words.otherOrChange}
      </button>
    </section>
  );
}
