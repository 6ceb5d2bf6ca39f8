import type { PointMark } from './partsPlot.ts';

/** A point of the rear: a square where it is bolted to the frame, a ring where it moves. */
export function Spot({ point: { x, y, still, leader } }: { readonly point: PointMark }) {
  return (
    <>
      {leader !== null && <path className="parts-leader" d={leader} />}
      {still ? (
        <rect className="parts-point" x={x - 5} y={y - 5} width={10} height={10} />
      ) : (
        <circle className="parts-point" cx={x} cy={y} r={5} />
      )}
    </>
  );
}
