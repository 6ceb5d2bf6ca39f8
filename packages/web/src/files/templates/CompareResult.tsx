import type { ComparedPart } from '@sagwright/workbench/compare/comparison';
import type { CompareSide } from '@sagwright/workbench/page/compareView';
import { useEffect, useState } from 'react';
import { useTable } from '../../app/useJob.ts';
import { templates as words } from '../../words/templates.ts';
import type { Compared } from '../../worker/messages.ts';
import './compareResult.css';

interface CompareResultProps {
  readonly a: CompareSide;
  readonly b: CompareSide;
}

/** What differs between the two, with how much and within what; what is alike when asked for. */
export function CompareResult({ a, b }: CompareResultProps) {
  const [part, setPart] = useState<ComparedPart | null>(null);
  const [alike, setAlike] = useState(false);
  const view = useComparison(a, b, part);
  if (view === null) return null;
  if (view === 'no job') return <p>{words.noJob}</p>;
  if (view === 'nothing in common') return <p>{words.nothingInCommon}</p>;
  const { parts, lines, count } = view;
  const alikeCount = lines.filter(({ differs }) => !differs).length;
  return (
    <>
      {parts.length > 1 && (
        <fieldset className="template-kinds">
          <legend className="compare-by">{words.byPart}</legend>
          {parts.map((each) => (
            <button
              key={each}
              type="button"
              className="key"
              aria-pressed={each === view.part}
              onClick={() => setPart(each)}
            >
              {words.parts[each]}
            </button>
          ))}
        </fieldset>
      )}
      <p role="status">
        <strong>{count}</strong>
      </p>
      <ul className="compare-lines">
        {lines
          .filter(({ differs }) => alike || differs)
          .map(({ path, name, a: first, b: second, says, differs }) => (
            <li key={`${path} ${name}`} data-differs={differs || undefined}>
              <strong>{name}</strong>
              <p className="compare-values">
                <span>
                  <small>{words.first}</small> {first === '' ? words.nothing : first}
                </span>
                <span>
                  <small>{words.second}</small> {second === '' ? words.nothing : second}
                </span>
              </p>
              <p className="jobs-quiet">{says}</p>
            </li>
          ))}
      </ul>
      {alikeCount > 0 && (
        <button type="button" className="key" aria-pressed={alike} onClick={() => setAlike(!alike)}>
          {alike ? words.hideAlike : words.showAlike(alikeCount)}
        </button>
      )}
    </>
  );
}

/** Worked out beside the plans; null until it is there first. */
function useComparison(
  a: CompareSide,
  b: CompareSide,
  part: ComparedPart | null,
): Compared['comparison'] | null {
  const { compare } = useTable();
  const [told, setTold] = useState<Compared['comparison'] | null>(null);
  useEffect(() => {
    let stale = false;
    void compare({ a, b, part }).then((answer) => {
      if (!stale) setTold(answer);
    });
    return () => {
      stale = true;
    };
  }, [compare, a, b, part]);
  return told;
}
