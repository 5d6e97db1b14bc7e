import { gramsIn } from '../../amount/size.js';
import { Exact } from '../../exact.js';
import type { Kitchen } from '../kitchen.js';

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
