import { isLengthUnit } from '../../amount/size.js';
import { statedIn } from '../../amount/stated.js';
import { isContainer } from '../../amount/unit-kind.js';
import { partOfEgg } from '../../kitchen/egg.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { isUseWhole, soldIn } from '../../kitchen/shop/buy.js';
import { byLength } from '../../version/convert/by-length.js';
import { isSizedPieces } from '../../version/convert/sized-pieces.js';
import { isShopPiece } from '../../version/weigh/weigh-line.js';
import type { Demand, Offer } from '../search/demand.js';
import { isCounted } from '../search/demands-of.js';
import { eggOffer } from './egg-offer.js';
import { measuredOffer } from './measured-offer.js';
import { enough, type OfferContext } from './offer-context.js';
import { OfferList } from './offer-list.js';
import { wholePackOffer } from './pack-offer.js';
import { isStandIn, pieceOffer, standInOffer } from './piece-offer.js';

/** Everything that a kitchen's tools and shops offer for a demand, at any batch factor that is considered. */
export function offerFor(demand: Demand, context: OfferContext): Offer {
  return enough(ofKind(demand, context), demand, context);
}

function ofKind(demand: Demand, context: OfferContext): Offer {
  const { kitchen } = context;
  const { food } = demand;
  if (food?.role === 'cure') return asWritten(demand);
  const sold = food === null ? null : soldIn(food, kitchen.id);
  if (partOfEgg(food) !== null && isCounted(demand)) return eggOffer(demand, context);
  if (demand.base === 'g' && sold !== null && isUseWhole(sold)) return wholePackOffer(demand, sold, context);
  // A pinch of what stands in is a pinch.
  if (isStandIn(demand) && isCounted(demand) && demand.base !== 'count') return standInOffer(demand, sold, context);
  if (isCounted(demand) && !isWeighedPiece(demand, kitchen)) return pieceOffer(demand, sold, context);
  if (isLength(demand)) return asLong(demand, context);
  if (!isStandIn(demand) && isSizedPieces(demand.reading, food, kitchen)) return pieceOffer(demand, sold, context);
  return measuredOffer(demand, sold, context);
}

/** A cure is as it was written. */
function asWritten(demand: Demand): Offer {
  const stated = statedIn(demand.reading);
  if (stated === null) throw new RangeError('A demand without an amount.');
  return new OfferList().add(demand, demand.quantity, 0, () => stated).offer([], 0);
}

/** A length of it, or pieces of a length each. */
function isLength({ reading, base }: Demand): boolean {
  const unit = reading.pack?.unit ?? reading.amounts[0]?.unit;
  return base === 'count' && unit !== undefined && isLengthUnit(unit);
}

/** Three inches of ginger are a gesture: no batch lengthens them by a tenth. */
function asLong(demand: Demand, { kitchen }: OfferContext): Offer {
  const written = statedIn(demand.reading);
  const stated = written === null ? null : byLength(written, kitchen);
  if (stated === null) throw new RangeError('A length without an amount.');
  demand.weight = 0;
  return new OfferList().add(demand, demand.quantity, 0, () => stated).offer([], 0);
}

/** A stick of butter, a block of cream cheese, a can of something that is not used whole. */
function isWeighedPiece({ reading, food, base, weighed }: Demand, kitchen: Kitchen): boolean {
  const unit = reading.amounts[0]?.unit;
  if (base !== 'g') return false;
  if (weighed.pack !== null || isShopPiece(reading, food, kitchen)) return true;
  return (unit === 'stick' && food?.role === 'fat') || (unit !== undefined && isContainer(unit));
}
