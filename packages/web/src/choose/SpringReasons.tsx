import type { LoadView, SpringView } from '@sagwright/workbench/page/shapes';
import { LoadSign } from '../machine/LoadSign.tsx';
import { choose as words } from '../words/choose.ts';

/** What speaks for and against a spring, what could not be checked, and what hands do for each load. */
export function SpringReasons({
  spring,
  loads,
}: {
  readonly spring: SpringView;
  readonly loads: readonly LoadView[];
}) {
  const lists = [
    { title: words.for, side: 'for', said: spring.for },
    { title: words.against, side: 'against', said: spring.against },
    { title: words.notChecked, side: 'not-checked', said: spring.notChecked },
  ].filter(({ said }) => said.length > 0);
  const set = spring.lanes.filter((lane) => lane.hands.length > 0);
  return (
    <div className="spring-reasons">
      <div className="spring-reasons-lists">
        {lists.map(({ title, side, said }) => (
          <section key={side} data-side={side}>
            <h4>{title}</h4>
            <ul>
              {said.map((reason) => (
                <li key={reason}>{reason}</li>
              ))}
            </ul>
          </section>
        ))}
      </div>
      {set.length > 0 && (
        <section>
          <h4>{words.hands}</h4>
          <ul className="spring-hands">
            {set.map((lane) => (
              <li key={lane.load}>
                <LoadSign letter={lane.letter} />
                <div>
                  <p className="choose-quiet">{loads.find((load) => load.id === lane.load)?.name}</p>
                  {lane.hands.map((line, i) =>
                    i === 0 ? <strong key={line}>{line}</strong> : <p key={line}>{line}</p>,
                  )}
                </div>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
