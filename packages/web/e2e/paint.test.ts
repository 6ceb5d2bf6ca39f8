import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Desk, openDesk, visit } from './page.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

describe.each(['phone', 'tablet', 'desktop'] as const)('on a %s', (size) => {
  test.each(['sun', 'truck'] as const)(
    'in %s colours the page opens on the machine, without a fault of axe',
    async (theme) => {
      const { context, page, errors } = await visit(desk, size, theme);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
      expect(errors).toEqual([]);
      await context.close();
    },
  );
});
