import { expect, test } from 'vitest';
import { actionOfKey } from './sheetKeys.ts';

const plain = { shiftKey: false, ctrlKey: false, altKey: false, metaKey: false };

test.each([
  ['Enter', {}, { kind: 'write' }],
  ['u', {}, { kind: 'next unit' }],
  ['O', { shiftKey: true }, { kind: 'next origin' }],
  ['ArrowUp', {}, { kind: 'step', times: 1 }],
  ['ArrowDown', {}, { kind: 'step', times: -1 }],
  ['ArrowUp', { shiftKey: true }, { kind: 'step', times: 10 }],
  ['ArrowDown', { shiftKey: true }, { kind: 'step', times: -10 }],
  ['z', { ctrlKey: true }, { kind: 'undo' }],
  ['z', { metaKey: true }, { kind: 'undo' }],
] as const)('%s with %o is %o', (key, held, action) => {
  expect(actionOfKey({ ...plain, ...held, key })).toEqual(action);
});

test.each(['7', ',', '/', 'ArrowLeft', 'Backspace', 'Tab', 'Escape', 'z'])(
  '%s is left to the line',
  (key) => {
    expect(actionOfKey({ ...plain, key })).toBeUndefined();
  },
);

test.each(['u', 'Enter', 'ArrowUp'])('%s with Ctrl or Alt is left to the browser', (key) => {
  expect(actionOfKey({ ...plain, ctrlKey: true, key })).toBeUndefined();
  expect(actionOfKey({ ...plain, altKey: true, key })).toBeUndefined();
});
