/** The list of keys. English. */
export const keyList = {
  title: 'Keys',
  close: 'Close',
  keys: [
    [['1', '2', '3'], 'go to a tab'],
    [['L'], 'next load'],
    [['R', 'F'], 'rear or front ladder, where one stands alone'],
    [['Ctrl', 'Z'], 'undo'],
    [['Esc'], 'close what lies open'],
    [['0', '…', '9'], 'on a figure: type a new one'],
    [['↑', '↓'], 'while typing: one step; with Shift ten'],
    [['U', 'O'], 'while typing: next unit, next origin'],
    [['Enter'], 'write, and on to the next figure'],
    [['?'], 'this list'],
  ],
} as const;
