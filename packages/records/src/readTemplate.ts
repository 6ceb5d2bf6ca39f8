import {
  type DocumentKind,
  type DocumentResult,
  parseDocument,
  type Refused,
  readDocument,
} from './reading/document.ts';
import { type Template, template, templateFormat, templateVersion } from './schema/template.ts';
import { templateProblems } from './template/problems.ts';

/** A template, or all that keeps it from being one. */
export type TemplateResult = { readonly ok: true; readonly template: Template } | Refused;

const kind: DocumentKind<Template> = {
  format: templateFormat,
  version: templateVersion,
  stranger: 'notATemplate',
  schema: template,
  incoherences: templateProblems,
};

/** Reads a template file's text, in the same steps as a job's. Never throws. */
export function readTemplate(text: string): TemplateResult {
  return asTemplate(readDocument(text, kind));
}

/** Reads a template from plain data, as `readTemplate` does from text. */
export function parseTemplate(value: unknown): TemplateResult {
  return asTemplate(parseDocument(value, kind));
}

function asTemplate(result: DocumentResult<Template>): TemplateResult {
  return result.ok ? { ok: true, template: result.document } : result;
}
