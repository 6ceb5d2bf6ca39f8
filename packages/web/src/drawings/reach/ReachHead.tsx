import { Lettering } from '../Lettering.tsx';
import { type ReachHeadInput, reachHead } from './reachHead.ts';
import './ReachLine.css';

/** What stands over all reach lines of a page, once. The lines themselves are read out, this is not. */
export function ReachHead({ input, width }: { readonly input: ReachHeadInput; readonly width: number }) {
  const { height, title, marks, past, stops } = reachHead(input, width);
  return (
    <svg className="reach-head" width={width} height={height} aria-hidden="true">
      <Lettering texts={[title]} className="reach-head-title" />
      <Lettering texts={marks} />
      {past !== null && <Lettering texts={[past]} className="reach-past" />}
      <path className="reach-head-stops" d={stops.map((x) => `M${x} ${height}v-5`).join('')} />
    </svg>
  );
}
