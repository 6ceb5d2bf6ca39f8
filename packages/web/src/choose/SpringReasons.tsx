import type { SpringView } from '@sagwright/workbench/page/shapes';
import { choose as words } from '../words/choose.ts';
import { together } from '../words/fields.ts';

/** What speaks for and against a spring, and what could not be checked. */
export function SpringReasons({ spring }: { readonly spring: SpringView }) {
  const lists = [
    { title: words.for, side: 'for', said: spring.for },
    { title: words.against, side: 'against', said: spring.against },
    { title: words.notChecked, side: 'not-checked', said: spring.notChecked },
  ].filter(({ said }) => said.length > 0);
  return (
    <div className="spring-reasons">
      {lists.map(({ title, side, said }) => (
        <section key={side} data-side={side}>
          <h4>{title}</h4>
          <ul>
            {said.map((reason) => (
              <li key={reason}>{together(reason)}</li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}
