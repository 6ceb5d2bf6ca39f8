import type { Template } from '@sagwright/records/schema/template';
import { useCallback, useEffect, useMemo, useState } from 'react';
import { newId } from '../../app/newId.ts';
import type { KeptTemplate } from '../../storage/kept.ts';
import { allOn } from '../../storage/refusal.ts';
import { openTemplateShelf, type TemplateShelf } from '../../storage/templateShelf.ts';

/** What is kept, and what can be done with it. */
export interface Templates {
  readonly kept: readonly KeptTemplate[] | 'unreadable';
  readonly keep: (template: Template) => ReturnType<TemplateShelf['keep']>;
  readonly remove: (id: string) => void;
}

/** The templates of this device, read again after each act. */
export function useTemplates(): Templates {
  const shelf = useMemo(openTemplateShelf, []);
  const [kept, setKept] = useState<Templates['kept']>([]);
  const look = useCallback(async () => setKept(await allOn(shelf)), [shelf]);
  useEffect(() => void look(), [look]);
  return {
    kept,
    keep: async (template) => {
      const outcome = await shelf.keep({ id: newId('template'), template, kept: new Date().toISOString() });
      await look();
      return outcome;
    },
    remove: (id) => void shelf.remove(id).then(look),
  };
}
