import { bounds } from '@sagwright/records/schema/bounds';
import type { Quantity } from '@sagwright/records/schema/quantity';
import type { PageView } from '@sagwright/workbench/page/shapes';
import { useTable } from '../../app/useJob.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SizeField } from '../../fields/SizeField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { at, write } from '../../job/edits.ts';
import { type Together, writeFigure } from '../../job/figures.ts';
import { figures as words } from '../../words/figures.ts';
import { asQuantity, assumedAt } from '../assumedAt.ts';
import { type Figure, mayBeLeftOut } from './figure.ts';
import { NumberField } from './NumberField.tsx';
import { RowsField } from './RowsField.tsx';

/** A figure of the machine in the field of its kind, read and written at its path. */
export function FigureField({ figure, view }: { readonly figure: Figure; readonly view: PageView | null }) {
  const { state, store } = useTable();
  const { path, label } = figure;
  const steps = path.split('.');
  const value = at(state.document, steps);
  const set = (next: unknown): void => store.act(label, (document) => [write(document, steps, next)]);
  switch (figure.kind) {
    case 'quantity': {
      const assumed = assumedAt(view, path);
      const together = togetherOf(figure, view);
      return (
        <QuantityField
          label={label}
          path={path}
          quantity={value as Quantity | undefined}
          dimension={bounds[figure.bound].dimension}
          bound={figure.bound}
          {...(figure.reading && { reading: figure.reading })}
          {...(assumed && { assumed })}
          {...(mayBeLeftOut(path) && { empty: words.notRead })}
          onCommit={(quantity) =>
            store.act(label, (document) => writeFigure(document, path, quantity, together))
          }
        />
      );
    }
    case 'number':
      return (
        <NumberField
          {...figure}
          value={value as number | undefined}
          onCommit={(next) => set(next ?? undefined)}
        />
      );
    case 'size':
      return (
        <SizeField
          {...figure}
          value={(value as string | undefined) ?? ''}
          onCommit={(size) => set(size === '' ? undefined : size)}
        />
      );
    case 'text':
      return (
        <TextField
          label={label}
          path={path}
          value={(value as string | undefined) ?? ''}
          most={figure.most}
          onCommit={(text) => set(text === '' ? undefined : text)}
        />
      );
    case 'choice':
      return (
        <ChoiceField
          label={label}
          path={path}
          value={figure.value === '' ? String(value ?? '') : figure.value}
          choices={figure.choices}
          onCommit={(next) => store.act(label, (document) => figure.change(document, next, state.changes))}
        />
      );
    case 'rows':
      return <RowsField figure={figure} value={value} onCommit={set} />;
  }
}

/** What a figure stands together with, and what the sum takes for it as long as nobody gives it. */
function togetherOf(figure: Extract<Figure, { kind: 'quantity' }>, view: PageView | null): Together | null {
  if (figure.together === null) return null;
  const { at: holder, needs } = figure.together;
  const usual = needs.map((name) => {
    const assumed = assumedAt(view, `${holder}.${name}`);
    return [name, assumed === undefined ? null : asQuantity(assumed)] as const;
  });
  return { at: holder, needs: Object.fromEntries(usual) };
}
