import { expect, test } from 'vitest';
import { jobJsonSchema, templateJsonSchema } from './jsonSchema.ts';

/** Mended by `npx vitest run packages/records/src/jsonSchema.test.ts --update`. */
test('the published JSON Schema is the one of this code', async () => {
  await expect(jobJsonSchema()).toMatchFileSnapshot('../../../docs/job.schema.json');
});

test('the published JSON Schema of templates is the one of this code', async () => {
  await expect(templateJsonSchema()).toMatchFileSnapshot('../../../docs/template.schema.json');
});
