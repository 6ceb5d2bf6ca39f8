import { expect, test } from 'vitest';
import { jobJsonSchema } from './jsonSchema.ts';

/** Mended by `npx vitest run packages/records/src/jsonSchema.test.ts --update`. */
test('the published JSON Schema is the one of this code', async () => {
  await expect(jobJsonSchema()).toMatchFileSnapshot('../../../docs/job.schema.json');
});
