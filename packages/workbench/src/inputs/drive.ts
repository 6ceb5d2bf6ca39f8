import { alongTravel } from '@sagwright/model/rear/alongTravel';
import type { ChainOrBeltSI, FinalDriveSI } from '@sagwright/model/rear/finalDrive';
import { wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import type { EndSI } from '@sagwright/model/statics/machine';
import type { Drive } from '@sagwright/records/schema/drive';
import { siOf } from '@sagwright/records/schema/quantity';
import { type Desk, impossible, note } from './desk.ts';

const PATH = 'machine.rear.drive';

/** How the rear wheel is driven, as the sum sees it; null where nobody said, and where no pivot says what the arm turns about. */
export function driveOf(desk: Desk, rear: EndSI): FinalDriveSI | null {
  const { drive } = desk.job.machine.rear;
  if (drive === undefined) return null;
  if (rear.axlePath.kind !== 'circle') {
    note(desk, 'drive without pivot', PATH);
    return null;
  }
  if (drive.kind === 'shaft') return { kind: 'shaft' };
  const pulling = pullingOf(desk, drive);
  tellOverlap(desk, rear, pulling);
  return pulling;
}

function pullingOf(desk: Desk, drive: Exclude<Drive, { kind: 'shaft' }>): ChainOrBeltSI {
  const { frontSprocket, teeth } = drive;
  const pitch = siOf(drive.pitch);
  return {
    kind: drive.kind,
    frontSprocket: {
      x: desk.take.known(`${PATH}.frontSprocket.x`, frontSprocket.x, 'hardPoint'),
      height: desk.take.known(`${PATH}.frontSprocket.height`, frontSprocket.height, 'hardPoint'),
    },
    frontRadius: pitchRadius(drive.kind, pitch, teeth.front),
    rearRadius: pitchRadius(drive.kind, pitch, teeth.rear),
  };
}

/**
 * Radius of the pitch circle [m]: a chain lies on it as a polygon of its pitch, p/(2 sin(π/z)); a toothed belt along its arc, p z/(2π).
 * Source: the polygon's and the circle's own geometry; the pitch is a standard's, and exact.
 */
function pitchRadius(kind: 'chain' | 'belt', pitch: number, teeth: number): number {
  return kind === 'chain' ? pitch / (2 * Math.sin(Math.PI / teeth)) : (pitch * teeth) / (2 * Math.PI);
}

/** Both sprockets must have room at every wheel travel. */
function tellOverlap(desk: Desk, rear: EndSI, drive: ChainOrBeltSI): void {
  const travelMax = wheelTravelAt(rear, 0, rear.strokeMax);
  const distances = alongTravel(rear, travelMax, 11, drive, null).map((row) => row.centreDistance!);
  const nearest = Math.min(...distances);
  const radii = drive.frontRadius + drive.rearRadius;
  if (nearest > radii) return;
  impossible(
    desk,
    `${PATH}.frontSprocket`,
    `Front sprocket: its middle comes within ${(nearest * 1000).toFixed(0)} mm of the rear axle, but the two pitch circles need ${(radii * 1000).toFixed(0)} mm. Check its place, the pitch and the teeth.`,
  );
}
