import type { FieldAction } from './fieldState.ts';

interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}

/** What a key of a hardware keyboard does in the sheet's lines; undefined where it types or moves the caret. */
export function actionOfKey({ key, shiftKey, ctrlKey, altKey, metaKey }: KeyPress): FieldAction | undefined {
  if (altKey) return undefined;
  if (ctrlKey || metaKey) return key === 'z' ? { kind: 'undo' } : undefined;
  switch (key) {
    case 'Enter':
      return { kind: 'write' };
    case 'u':
    case 'U':
      return { kind: 'next unit' };
    case 'o':
    case 'O':
      return { kind: 'next origin' };
    case 'ArrowUp':
      return { kind: 'step', times: shiftKey ? 10 : 1 };
    case 'ArrowDown':
      return { kind: 'step', times: shiftKey ? -10 : -1 };
    default:
      return undefined;
  }
}
