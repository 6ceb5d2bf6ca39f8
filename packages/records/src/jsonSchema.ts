import * as z from 'zod/mini';
import { descriptions } from './schema/descriptions.ts';
import { template } from './schema/template.ts';
import { job } from './schema.ts';

/**
 * The job's shape as a JSON Schema (draft 2020-12), for other people's tools: published as docs/job.schema.json. It
 * holds the shape; ranges that depend on the unit are in its descriptions, and what one part says against another only
 * the reader judges.
 */
export function jobJsonSchema(): string {
  return jsonSchemaOf(job, 'Sagwright job, version 1');
}

/** A template's shape in the same way: published as docs/template.schema.json. */
export function templateJsonSchema(): string {
  return jsonSchemaOf(template, 'Sagwright template, version 1');
}

function jsonSchemaOf(document: z.ZodMiniType, title: string): string {
  const { $schema, ...shape } = z.toJSONSchema(document, { metadata: descriptions });
  return `${JSON.stringify({ $schema, title, ...shape }, null, 2)}\n`;
}
