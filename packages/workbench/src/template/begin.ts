import type { JobDocument } from '@sagwright/records/schema';
import type { TemplateOf } from '@sagwright/records/schema/template';
import { jobAround } from '@sagwright/records/template/around';
import { templateWords as words } from '../words/english/template.ts';
import { usualPreload } from './preload.ts';

const noteAtMost = 4000;

/** A job begun with a machine that was kept. Its note says what nobody has read on this one yet. */
export function jobFrom(template: TemplateOf<'machine'>): JobDocument {
  const { format, version, name, ...rest } = jobAround(template, usualPreload);
  return { format, version, name, note: noteOf(template), ...rest };
}

function noteOf({ name, note, fitted }: TemplateOf<'machine'>): string {
  const front = fitted.front === undefined ? [] : [words.frontPreload(said('front'))];
  const own = note === undefined ? [] : [note];
  return [words.begun(name, [words.rearPreload(said('rear')), ...front]), ...own]
    .join('\n\n')
    .slice(0, noteAtMost);
}

function said(end: 'rear' | 'front'): string {
  const { value, unit, plusMinus } = usualPreload[end];
  return `${value} ± ${plusMinus!.value} ${unit}`;
}
