/** Whether a unit counts containers of the shop. */
export function isContainer(unit: string): unit is 'can' | 'tin' | 'packet' {
  return unit === 'can' || unit === 'tin' || unit === 'packet';
}

/** Whether a unit counts what a hand takes up, and has no size. */
export function isGesture(unit: string): unit is 'pinch' | 'dash' | 'handful' {
  return unit === 'pinch' || unit === 'dash' || unit === 'handful';
}

/** Whether a unit is a spoon, or what is taken for less than one. */
export function isSpoonOrPinch(unit: string): unit is 'tsp' | 'tbsp' | 'pinch' | 'dash' {
  return unit === 'tsp' || unit === 'tbsp' || unit === 'pinch' || unit === 'dash';
}
