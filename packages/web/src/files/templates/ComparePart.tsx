import type { Template } from '@sagwright/records/schema/template';
import type { CompareSide } from '@sagwright/workbench/page/compareView';
import { useMemo, useState } from 'react';
import { useTable } from '../../app/useJob.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { templates as words } from '../../words/templates.ts';
import { nameOf } from '../JobLine.tsx';
import { CompareResult } from './CompareResult.tsx';

interface ComparePartProps {
  readonly templates: readonly { readonly id: string; readonly template: Template }[];
}

const TABLE = 'table';
const NOBODY = '';

/** Two of the templates, or one and the job on the table, to be laid beside each other. */
export function ComparePart({ templates }: ComparePartProps) {
  const { state } = useTable();
  const [first, setFirst] = useState(TABLE);
  const [second, setSecond] = useState(NOBODY);
  const choices = [
    { value: TABLE, word: words.onTable(nameOf(state.document)) },
    ...templates.map(({ id, template }) => ({
      value: id,
      word: `${template.name} (${words.kind[template.kind]})`,
    })),
  ];
  const [a, b] = [useSide(first, templates), useSide(second, templates)];
  return (
    <div className="compare-part">
      <div className="compare-picks">
        <ChoiceField
          label={words.first}
          path="compare-first"
          value={first}
          choices={choices}
          onCommit={setFirst}
        />
        <ChoiceField
          label={words.second}
          path="compare-second"
          value={second}
          choices={[{ value: NOBODY, word: words.pick }, ...choices]}
          onCommit={setSecond}
        />
      </div>
      {a !== null && b !== null && <CompareResult key={`${first} ${second}`} a={a} b={b} />}
    </div>
  );
}

/** The same object as long as it is the same side, so that nothing is worked out twice. */
function useSide(id: string, templates: ComparePartProps['templates']): CompareSide | null {
  const { document } = useTable().state;
  const template = templates.find((each) => each.id === id)?.template;
  return useMemo(() => {
    if (id === TABLE) return { from: 'job', document };
    return template === undefined ? null : { from: 'template', template };
  }, [id, template, document]);
}
