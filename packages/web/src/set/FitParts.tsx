import type { JobDocument } from '@sagwright/records/schema';
import type { PageView } from '@sagwright/workbench/page/shapes';
import type { LineWords, WorkListWords } from '@sagwright/workbench/words/fitting';
import { newId } from '../app/newId.ts';
import { useStore } from '../app/useJob.ts';
import { write } from '../job/edits.ts';
import { nextOrder } from '../job/nextOrder.ts';
import { FigureField } from '../machine/figures/FigureField.tsx';
import { quantity } from '../machine/figures/figure.ts';
import { PartFields } from '../machine/figures/PartFields.tsx';
import { fittingFields, set as words } from '../words/set.ts';
import { whole } from '../words/whole.ts';
import { fittingParts, inTheWayFigures, toolFigures } from './fittingFigures.ts';

interface FitPartsProps {
  readonly list: WorkListWords;
  readonly job: JobDocument;
  readonly view: PageView;
}

/** What does not fit, in sight; and, folded once the work has begun, each eye against its bolt and all that is told of it. */
export function FitParts({ list, job, view }: FitPartsProps) {
  const all = [...list.mounts, { mount: 'both', title: words.wholeUnit, lines: list.whole }];
  const failing = all.flatMap(({ title, lines }) =>
    lines.flatMap((line) => (line.tone === 'fails' ? [{ title, ...line }] : [])),
  );
  return (
    <section className="fit-parts" aria-label={words.parts}>
      {failing.length > 0 && (
        <div className="fit-early">
          <h3>{words.doesNotFit}</h3>
          {failing.map(({ title, text }) => (
            <p key={title + text}>
              {title}: {whole(text)}
            </p>
          ))}
        </div>
      )}
      <details className="fit-told-of" open={list.done.length === 0}>
        <summary>{words.parts}</summary>
        {all.map(({ mount, title, lines }) => (
          <div key={mount} className="fit-lines">
            <h3>{title}</h3>
            <ul>
              {lines.map((line) => (
                <Line key={line.text} {...line} />
              ))}
            </ul>
          </div>
        ))}
        {fittingParts(job).map((part) => (
          <PartFields key={part.title} part={part} view={view} isAsked={false} />
        ))}
        <FreeLength job={job} view={view} />
        <Members job={job} view={view} />
      </details>
    </section>
  );
}

function Line({ text, tone }: LineWords) {
  return <li data-tone={tone}>{whole(text)}</li>;
}

/** Of the spring that goes in: every preload is counted from it. */
function FreeLength({ job, view }: Omit<FitPartsProps, 'list'>) {
  const id = view.rear.planned;
  const spring = id === null ? undefined : job.springs[id];
  if (id === null || spring === undefined) return null;
  const figure = quantity(
    `springs.${id}.freeLength`,
    words.freeLength(spring.name),
    'springLength',
    'springLength',
  );
  return <PartFields part={{ title: null, figures: [figure] }} view={view} isAsked={false} />;
}

/** Parts in the way, and tools, with keys that add one and take one out. */
function Members({ job, view }: Omit<FitPartsProps, 'list'>) {
  const store = useStore();
  const rear = job.fitting?.rear ?? {};
  const lists = [
    {
      at: 'inTheWay' as const,
      title: fittingFields.inTheWay,
      members: inTheWayFigures(rear),
      add: words.newPart,
      one: words.part,
      fresh: { name: words.part },
    },
    {
      at: 'tools' as const,
      title: fittingFields.tools,
      members: toolFigures(rear),
      add: words.newTool,
      one: words.tool,
      fresh: { on: 'topBolt', kind: 'spanner' },
    },
  ];
  return lists.map(({ at, title, members, add, one, fresh }) => (
    <section key={at} className="sheet-part">
      <h3>{title}</h3>
      {members.map(([id, figures]) => (
        <div key={id} className="sheet-fields">
          {figures.map((figure) => (
            <FigureField key={figure.path} figure={figure} view={view} />
          ))}
          <button
            type="button"
            className="key"
            onClick={() =>
              store.act(words.remove(one), (document) => [
                write(document, ['fitting', 'rear', at, id], undefined),
              ])
            }
          >
            {words.remove(one)}
          </button>
        </div>
      ))}
      <button
        type="button"
        className="key"
        onClick={() =>
          store.act(add, (document) => {
            const order = nextOrder(rear[at] ?? {});
            return [write(document, ['fitting', 'rear', at, newId('fit')], { ...fresh, order })];
          })
        }
      >
        {add}
      </button>
    </section>
  ));
}
