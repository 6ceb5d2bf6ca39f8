import type { LoadView } from '@sagwright/workbench/page/shapes';
import { Button } from 'react-aria-components/Button';
import { attitude as attitudeWords, setUps } from '../words/machine.ts';
import { type SetUpShown, standShown } from './drawingInputs.ts';
import './standLine.css';

interface StandLineProps {
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly onShow: (shown: SetUpShown) => void;
}

/** What must be said of this load, which set-up is shown, and how the machine stands in it: as changes where there are some. */
export function StandLine({ load, shown, onShow }: StandLineProps) {
  const stand = standShown(load, shown);
  return (
    <section className="stand-line" aria-label={attitudeWords.label}>
      {load.messages.map((message) => (
        <p key={message.text} className="stand-line-message" data-tone={message.tone}>
          {message.text}
        </p>
      ))}
      {load.id !== null && (
        <fieldset className="stand-line-set-ups" aria-label={setUps.label}>
          {(['asFound', 'planned'] as const).map((each) => (
            <Button
              key={each}
              aria-pressed={shown === each}
              isDisabled={each === 'planned' && load.planned === null}
              onPress={() => onShow(each)}
            >
              {setUps[each]}
            </Button>
          ))}
        </fieldset>
      )}
      {stand.why !== null && (
        <p className="stand-line-message" data-tone="stop">
          {stand.why}
        </p>
      )}
      <dl className="stand-line-attitude">
        {stand.attitude.map(({ name, figure, change }) => (
          <div key={name}>
            <dt>{attitudeWords.name[name]}</dt>
            <dd>
              {figure.value} {figure.unit}
              {change !== null && <span className="stand-line-change"> {attitudeWords.change(change)}</span>}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
