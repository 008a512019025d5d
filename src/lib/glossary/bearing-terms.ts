import type { Entry } from './entry';

/** Terms of a wheel bearing, of its loads and of its life. */
export const BEARING_TERMS = [
  {
    id: 'contact-angle',
    term: 'Contact angle',
    aliases: ['angle of contact'],
    meaning:
      'Angle between the line along which a row’s balls or rollers press and the upright plane through the row. The larger it is, the more thrust a row can take, and the farther out lies its pressure centre.',
    source: 'ISO 5593 (from memory)',
    quantity: 'contactAngle',
    lesson: 'load-line-and-rows',
  },
  {
    id: 'induced-thrust',
    term: 'Induced thrust',
    aliases: ['induced axial load', 'internal axial force'],
    meaning:
      'Thrust that a row with a contact angle makes out of its radial load alone: it pushes its rings apart along the axis, and something has to hold against it, as a rule the other row.',
    source: 'makers’ catalogues',
    lesson: 'cornering',
  },
  {
    id: 'load-line',
    term: 'Load line',
    aliases: ['line of action of the wheel load'],
    meaning:
      'Line along which the wheel load goes up: the wheel’s centre plane, seen from the front. How far it lies outboard of the middle between the pressure centres is the load-line offset.',
    source: 'common engineering use',
    quantity: 'loadLineOffset',
    lesson: 'load-line-and-rows',
  },
  {
    id: 'loaded-side',
    term: 'Loaded side',
    aliases: ['load zone', 'loaded zone'],
    meaning:
      'The part of a row’s circle whose balls or rollers carry at the moment: the top of a front wheel bearing under a standing car, the bottom when the row’s load has flipped.',
    source: 'common engineering use',
    lesson: 'load-line-and-rows',
  },
  {
    id: 'pressure-centre',
    term: 'Pressure centre',
    aliases: ['load centre', 'effective load centre'],
    meaning:
      'Point where the contact lines of a row meet the bearing’s axis. The row holds the hub as if it held it there.',
    source: 'makers’ catalogues',
    lesson: 'load-line-and-rows',
  },
  {
    id: 'pressure-centre-spread',
    term: 'Pressure-centre spread',
    aliases: ['bearing spread', 'effective spread'],
    meaning:
      'Distance between the pressure centres of two rows. Back to back it is larger than the row spacing, face to face smaller.',
    source: 'geometry',
    quantity: 'pressureCentreSpread',
    lesson: 'load-line-and-rows',
  },
  {
    id: 'duty-cycle',
    term: 'Duty cycle',
    aliases: ['load spectrum', 'load collective'],
    meaning:
      'How a car spends its distance: which share of the revolutions a wheel makes straight ahead, in bends to each side, on rough road, and with which loads.',
    source: 'bearing makers’ handbooks, average of fluctuating load',
    lesson: 'rating-life',
  },
  {
    id: 'equivalent-load',
    term: 'Equivalent load',
    aliases: ['equivalent dynamic bearing load', 'dynamic equivalent load'],
    meaning:
      'The steady radial load that wears a row out as fast as its radial load and its thrust do together. The mean equivalent load does the same for a whole duty cycle.',
    source: 'ISO 281:2007 (from memory)',
    lesson: 'rating-life',
  },
  {
    id: 'load-rating',
    term: 'Load rating',
    aliases: ['basic dynamic load rating', 'dynamic capacity'],
    meaning:
      'The load at which a bearing row is rated for one million revolutions. A yardstick from the catalogue, not a load to drive with.',
    source: 'ISO 281:2007 (from memory)',
    quantity: 'rowRating',
    lesson: 'rating-life',
  },
  {
    id: 'rating-life',
    term: 'Rating life',
    aliases: ['basic rating life', 'L10 life'],
    meaning:
      'Revolutions that ninety of a hundred like bearings reach before the first sign of fatigue, under a steady load. It knows nothing of water, dirt, blows or bad mounting.',
    source: 'ISO 281:2007 (from memory)',
    quantity: 'hubLife',
    lesson: 'rating-life',
  },
] as const satisfies readonly Entry[];
