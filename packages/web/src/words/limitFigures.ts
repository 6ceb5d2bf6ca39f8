/** Words of the figures that limits are held against. English. */
export const limitFigures = {
  group: 'Limits',
  topSpeed: 'Top speed',
  leastLean: 'Side stand, least lean',
  mostLean: 'Side stand, most lean',
  tyre: { rear: 'Rear tyre', front: 'Front tyre' },
  placardPressure: 'Pressure on the placard',
  mostPressure: 'Most pressure on its wall',
  byPressure: "Maker's table",
  pressure: 'pressure',
  capacity: 'bears',
  name: 'What comes near',
  readings: 'Room read',
  travel: 'wheel travel',
  gap: 'room',
  keep: 'Room to keep',
} as const;
