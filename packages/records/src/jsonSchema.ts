import * as z from 'zod/mini';
import { descriptions } from './schema/descriptions.ts';
import { job } from './schema.ts';

/**
 * The job's shape as a JSON Schema (draft 2020-12), for other people's tools: published as docs/job.schema.json. It
 * holds the shape; ranges that depend on the unit are in its descriptions, and what one part says against another only
 * the reader judges.
 */
export function jobJsonSchema(): string {
  const { $schema, ...shape } = z.toJSONSchema(job, { metadata: descriptions });
  return `${JSON.stringify({ $schema, title: 'Sagwright job, version 1', ...shape }, null, 2)}\n`;
}
