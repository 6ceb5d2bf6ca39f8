import type { JobDocument } from '@sagwright/records/schema';
import type { Torque } from '@sagwright/records/schema/fitting';
import type { PhaseWords, StepWords, TorqueWords } from '@sagwright/workbench/words/fitting';
import { memo } from 'react';
import { set as words } from '../words/set.ts';
import { whole } from '../words/whole.ts';
import { TorqueBox } from './TorqueBox.tsx';

interface FitStepsProps {
  readonly phases: readonly PhaseWords[];
  readonly job: JobDocument;
  readonly onDone: (id: string, title: string) => void;
}

/** What is left to be done, below how the machine stands for it; the next step's key is filled. */
export function FitSteps({ phases, job, onDone }: FitStepsProps) {
  const next = phases[0]?.steps[0]?.id;
  const boxes = firstOfPart(phases);
  return phases.map((phase) => (
    <section key={phase.steps[0]!.id} className="fit-phase">
      <div className="fit-stance">
        <h3>{phase.stance?.title ?? words.anyStance}</h3>
        {phase.stance !== null && <p>{phase.stance.trap}</p>}
      </div>
      <ol className="fit-steps">
        {phase.steps.map((step) => (
          <FitStep
            key={step.id}
            step={step}
            isNext={step.id === next}
            box={boxes.get(step.id) ?? null}
            torque={step.torque === null ? undefined : job.fitting?.rear?.torques?.[step.torque.part]}
            onDone={onDone}
          />
        ))}
      </ol>
    </section>
  ));
}

/** The first step of each part that is tightened has the box for its torque; left and right share it. */
function firstOfPart(phases: readonly PhaseWords[]): ReadonlyMap<string, TorqueWords['part']> {
  const steps = phases.flatMap((phase) => phase.steps);
  const first = new Map<TorqueWords['part'], string>();
  for (const { id, torque } of steps)
    if (torque !== null && !first.has(torque.part)) first.set(torque.part, id);
  return new Map([...first].map(([part, id]) => [id, part]));
}

interface FitStepProps {
  readonly step: StepWords;
  readonly isNext: boolean;
  readonly box: TorqueWords['part'] | null;
  readonly torque: Torque | undefined;
  readonly onDone: (id: string, title: string) => void;
}

const FitStep = memo(function FitStep({ step, isNext, box, torque, onDone }: FitStepProps) {
  const { id, number, title, how, trap, after, tools } = step;
  return (
    <li className="fit-step" data-step={id} value={number}>
      <span className="fit-number" aria-hidden="true">
        {number}
      </span>
      <div className="fit-told">
        <h4>{title}</h4>
        {step.stops.map((text) => (
          <p key={text} className="fit-stop">
            {text}
          </p>
        ))}
        <p>{how}</p>
        {tools.length > 0 && (
          <ul className="fit-tools">
            {tools.map((tool) => (
              <li key={tool}>{whole(tool)}</li>
            ))}
          </ul>
        )}
        {step.torque !== null && (
          <p className="fit-torque" data-usable={step.torque.usable}>
            {step.torque.text}
          </p>
        )}
        <p className="fit-trap">
          <b>{words.mind}</b> {trap}
        </p>
        {after.length > 0 && <p className="fit-quiet">{after.join(' ')}</p>}
      </div>
      <button
        type="button"
        className="key fit-key"
        data-do={isNext || undefined}
        aria-label={`${words.done}: ${number}, ${title}`}
        onClick={() => onDone(id, title)}
      >
        {words.done}
      </button>
      {box !== null && <TorqueBox part={box} torque={torque} />}
    </li>
  );
});
