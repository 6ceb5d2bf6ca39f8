import './Pad.css';
import './key.css';
import type { ReactNode } from 'react';
import * as words from '../words/fields.ts';
import type { FieldAction } from './fieldState.ts';
import { clear, deleteBack, insert, toggleMinus } from './padKeys.ts';

interface PadProps {
  /** The line that the keys type into. */
  readonly line: () => HTMLInputElement;
  /** How fine the fraction key is; null where the line takes % in its place. */
  readonly parts: 16 | 2 | null;
  readonly step: string;
  readonly act: (action: FieldAction) => void;
  /** The key that writes. */
  readonly children: ReactNode;
}

/** Digits and signs, large enough for a gloved hand, in places that never move. */
export function Pad({ line, parts, step, act, children }: PadProps) {
  const sign = (text: string, name?: string) => (
    <Key name={name} strong onPress={() => insert(line(), text)}>
      {text}
    </Key>
  );
  return (
    <div className="pad">
      {sign('7')}
      {sign('8')}
      {sign('9')}
      <Key name={words.deleteKey} onPress={() => deleteBack(line())}>
        <DeleteMark />
      </Key>
      <Key onPress={() => clear(line())}>{words.clearKey}</Key>
      {sign('4')}
      {sign('5')}
      {sign('6')}
      <Key name={words.minusKey} strong onPress={() => toggleMinus(line())}>
        −
      </Key>
      <Key name={words.stepUp(step)} step onPress={() => act({ kind: 'step', times: 1 })}>
        + {step}
      </Key>
      {sign('1')}
      {sign('2')}
      {sign('3')}
      {parts === null ? (
        sign('%', words.percentKey)
      ) : (
        <Key name={words.fractionKey(parts)} step onPress={() => act({ kind: 'fraction' })}>
          {parts === 16 ? '1/16' : '1/2'}
        </Key>
      )}
      <Key name={words.stepDown(step)} step onPress={() => act({ kind: 'step', times: -1 })}>
        − {step}
      </Key>
      {sign('0')}
      {sign('.', words.pointKey)}
      {sign(',', words.commaKey)}
      {children}
    </div>
  );
}

function Key(props: {
  name?: string | undefined;
  strong?: boolean;
  step?: boolean;
  onPress: () => void;
  children: ReactNode;
}) {
  return (
    <button
      type="button"
      className="key"
      data-strong={props.strong}
      data-step={props.step}
      aria-label={props.name}
      onMouseDown={(event) => event.preventDefault()} // the line keeps the focus and its caret
      onClick={props.onPress}
    >
      {props.children}
    </button>
  );
}

function DeleteMark() {
  return (
    <svg
      viewBox="0 0 32 24"
      width="32"
      height="24"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
    >
      <path d="M10 3h19v18H10L2 12zM15 8l8 8M23 8l-8 8" />
    </svg>
  );
}
