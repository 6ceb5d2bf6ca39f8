import { capital } from '@sagwright/workbench/words/capital';
import type { WhyInputWords, WhyWords } from '@sagwright/workbench/words/why';
import { useCallback } from 'react';
import { useTable } from '../app/useJob.ts';
import { useTold } from '../app/useTold.ts';
import { opened as words } from '../words/opened.ts';
import type { FigureQuestion } from '../worker/messages.ts';
import { SheetFrame } from './SheetFrame.tsx';
import type { SheetProps } from './sheets.ts';
import './whySheet.css';

/** A figure opened up: its value, what its ± is made of, how it comes about and whose equation that is. */
export default function WhySheet({
  question,
  onSheet,
}: Pick<SheetProps, 'onSheet'> & { readonly question: FigureQuestion }) {
  const figure = useOpened(question);
  const close = (): void => onSheet(null);
  if (typeof figure === 'string') {
    return (
      <SheetFrame title={words.title} onClose={close}>
        <p>{figure}</p>
      </SheetFrame>
    );
  }
  const { title, place, value, equation, where, source, inputs } = figure;
  return (
    <SheetFrame title={capital(title)} note={place} onClose={close}>
      <p className="why-value">{value}</p>
      <section className="sheet-part">
        <h3>{words.because}</h3>
        <Shares inputs={inputs} onChange={(path) => onSheet({ kind: 'figures', path })} />
      </section>
      <section className="sheet-part">
        <h3>{words.equation}</h3>
        <p className="why-equation">{equation}</p>
        <dl className="why-where">
          {where.map(([symbol, meaning]) => (
            <div key={symbol}>
              <dt>{symbol}</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
        <p>
          {words.source}: {source}.
        </p>
      </section>
    </SheetFrame>
  );
}

/** Asks again for each new plan, so that an open figure moves along: also where its inputs are others and no figure of the view is. */
function useOpened(question: FigureQuestion): WhyWords | string {
  const { open } = useTable();
  const asked = JSON.stringify(question);
  const ask = useCallback(() => open(JSON.parse(asked) as FigureQuestion), [open, asked]);
  return useTold(ask) ?? words.working;
}

/** Parts below this share are told together. */
const SMALL = 0.01;

function Shares({
  inputs,
  onChange,
}: {
  readonly inputs: readonly WhyInputWords[];
  readonly onChange: (path: string) => void;
}) {
  if (inputs.length === 0) return <p>{words.exact}</p>;
  const large = inputs.filter(({ share }) => share >= SMALL);
  const small = inputs.filter(({ share }) => share < SMALL);
  const rest = small.reduce((sum, { share }) => sum + share, 0);
  return (
    <ul className="why-shares">
      {large.map(({ path, name, figure, origin, adds, share }) => (
        <li key={path}>
          <button type="button" onClick={() => onChange(path)}>
            <span>{capital(name)}</span>
            <b>{words.share(percent(share))}</b>
            <span className="why-input">
              {figure} · {origin}
            </span>
            <span className="why-input">{words.adds(adds)}</span>
            <span className="why-bar" style={{ inlineSize: `${100 * share}%` }} />
          </button>
        </li>
      ))}
      {small.length > 0 && <li className="why-rest">{words.smaller(small.length, percent(rest))}</li>}
    </ul>
  );
}

function percent(share: number): string {
  return share < 0.005 ? '< 1' : (100 * share).toFixed(0);
}
