import { gramsIn } from '../../amount/size.js';
import { Exact } from '../../exact.js';
import type { Sold } from '../../food/food.js';
import type { Kitchen } from '../kitchen.js';
import { isMultiple, onTheMark } from './is-multiple.js';

/** Grams of one step of what a kitchen's counter weighs off. */
export function counterStepGrams(kitchen: Kitchen): Exact {
  return kitchen.counter.unit === 'lb' ? kitchen.counter.step.times(gramsIn('lb')) : kitchen.counter.step;
}

/** A step of what a counter weighs off, as it is asked for. */
export interface CounterStep {
  /** In the counter's unit. */
  step: Exact;
  grams: Exact;
}

const third = new Exact(1).dividedBy(3);

/** The steps by which a kitchen's counter is asked: where it weighs pounds, thirds of them too. Common practice, no source. */
export function counterSteps(kitchen: Kitchen): CounterStep[] {
  const own = { step: kitchen.counter.step, grams: counterStepGrams(kitchen) };
  return kitchen.counter.unit === 'lb' ? [own, { step: third, grams: gramsIn('lb').times(third) }] : [own];
}

/** Whether a weight is one that a kitchen's counter is asked for. */
export function isOnCounterStep(grams: Exact, kitchen: Kitchen): boolean {
  return counterSteps(kitchen).some((each) => isMultiple(grams, each.grams, onTheMark));
}

/** Neither packed nor sold by the piece: any other weight than the counter's is one that no shop there sells. */
export function isWeighedOffOnly(sold: Sold | null): boolean {
  return sold?.loose === true && !sold.singly && sold.packs.length === 0;
}
