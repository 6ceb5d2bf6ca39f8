import type { HandsView, LaneView, PageView, SpringView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import { LoadSign } from '../machine/LoadSign.tsx';
import { hands as words } from '../words/choose.ts';
import type { ChooseEnd } from './end.ts';
import { SpringWhy } from './SpringWhy.tsx';
import './springHands.css';

interface SpringHandsProps {
  readonly end: ChooseEnd;
  readonly spring: SpringView;
  readonly view: PageView;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
}

interface Column {
  readonly what: 'setting' | 'air' | 'length' | 'turns' | 'rests' | 'bounces';
  readonly title: string;
  readonly cell: (hands: HandsView) => string;
}

/** What hands set with a spring for each load, and how the machine then rests; what is set opens up. */
export function SpringHands({ end, spring, view, onField }: SpringHandsProps) {
  const [asked, setAsked] = useState<string | null>(null);
  const rows = spring.lanes.flatMap(({ hands, ...lane }) => (hands === null ? [] : [{ lane, hands }]));
  if (rows.length === 0) return null;
  const isAir = view[end].adjuster?.sets === 'pressure';
  const columns = columnsOf(end, view).filter(({ cell }) => rows.some(({ hands }) => cell(hands) !== ''));
  return (
    <section className="spring-hands">
      <h4>{words.title[end]}</h4>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.load}</th>
            {columns.map(({ what, title }) => (
              <th key={title} scope="col" data-what={what}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ lane, hands }) => (
            <tr key={lane.load}>
              <th scope="row">
                <LoadOf lane={lane} view={view} />
              </th>
              {columns.map(({ what, title, cell }) => (
                <td key={title} data-what={what} data-title={title}>
                  {what === 'setting' && cell(hands) !== '' ? (
                    <button
                      type="button"
                      className="choose-figure"
                      aria-expanded={lane.load === asked}
                      onClick={() => setAsked(asked === lane.load ? null : lane.load)}
                    >
                      {cell(hands)}
                    </button>
                  ) : (
                    cell(hands)
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {asked !== null && (
        <SpringWhy
          key={asked}
          question={{ figure: isAir ? 'pressure' : 'collar', end, spring: spring.id, loadCase: asked }}
          onClose={() => setAsked(null)}
          onField={onField}
        />
      )}
    </section>
  );
}

function LoadOf({
  lane,
  view,
}: {
  readonly lane: Pick<LaneView, 'load' | 'letter'>;
  readonly view: PageView;
}) {
  return (
    <span className="spring-hands-load">
      <LoadSign letter={lane.letter} />
      <span>{view.loads.find(({ id }) => id === lane.load)?.name}</span>
    </span>
  );
}

function columnsOf(end: ChooseEnd, view: PageView): readonly Column[] {
  const { adjuster } = view[end];
  return [
    {
      what: 'setting',
      title: adjuster === null ? '' : words.setting(adjuster.name, adjuster.unit),
      cell: ({ setting }) => setting ?? '',
    },
    ...airColumns(end, view),
    {
      what: 'length',
      title: words.springLength(view.lengthUnit),
      cell: ({ springLength }) => springLength ?? '',
    },
    { what: 'turns', title: words.turns, cell: ({ turns }) => turns.join('\n') },
    {
      what: 'rests',
      title: words.rests(view.lengthUnit),
      cell: ({ rests, share }) => (rests === null ? '' : words.restsAt(rests, share ?? '')),
    },
    {
      what: 'bounces',
      title: words.bounces,
      cell: ({ bounces, bouncesWithoutTyre }) =>
        bounces === null ? '' : words.bouncesAt(bounces, bouncesWithoutTyre),
    },
  ];
}

/** Where a pressure sets the end: the same setting as it is read on the wheels; beside a collar: the pressure that would do instead. */
function airColumns(end: ChooseEnd, view: PageView): readonly Column[] {
  const { air } = view.shock;
  if (end === 'front' || air === null) return [];
  if (view.rear.adjuster?.sets !== 'pressure') {
    return [{ what: 'air', title: words.orAir(air.unit), cell: ({ pressure }) => pressure?.wanted ?? '' }];
  }
  return [
    { what: 'air', title: words.alone, cell: ({ pressure }) => pressure?.alone ?? '' },
    { what: 'air', title: words.laden, cell: ({ pressure }) => pressure?.laden ?? '' },
  ];
}
