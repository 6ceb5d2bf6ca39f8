import { limitRowWords, payloadWords, roomWords } from '@sagwright/workbench/limits/words';
import { limitList as say } from '@sagwright/workbench/words/english/limitList';
import { wrap } from '../terminal/text.ts';
import { heading, nameOf, type Page } from './page.ts';

/** Every limit of the job in one list, then the room that is left with each load. */
export function limitListLines(page: Page): readonly string[] {
  const { planned, result, units, width } = page;
  const { rows, room, payload } = result.limits;
  return [
    ...heading(page, say.title, say.titleWords),
    ...rows.flatMap((row) => wrap(limitRowWords(planned, row, units), width, '  ', '  ')),
    ...(payload.length === 0 ? [] : ['', ...heading(page, say.roomTitle, say.roomWords)]),
    ...result.loadCases.flatMap(({ id }) => {
      const ofLoad = room.filter(({ loadCase }) => loadCase === id);
      const whole = payload.filter(({ loadCase }) => loadCase === id);
      return [
        ...wrap(nameOf(page, id), width, '  ', '   '),
        ...whole.flatMap((each) => wrap(payloadWords(each, units), width, '     ', '  ')),
        ...ofLoad.flatMap((each) => wrap(roomWords(planned, each, units), width, '     ', '  ')),
      ];
    }),
  ];
}
