/** What a survey finds and wants explained. Each may also be a cause of the next. */
export const conditions = {
  'free-water': {
    title: 'Water lies in the space',
    meaning: 'Water stands on the ground, on the liner or under it.',
  },
  'damp-masonry': {
    title: 'Damp walls and piers',
    meaning: 'Walls or piers look or feel damp.',
  },
  'humid-air': {
    title: 'The air is too humid',
    meaning: 'The air of the space stays above what its kind of space may have.',
  },
  sweating: {
    title: 'Surfaces sweat',
    meaning: 'Ducts, pipes, walls or wood are colder than the dew point, and water forms on them.',
  },
  'damp-far-end': {
    title: 'One end stays damp',
    meaning: 'Humidity differs by more than 10 points from one part of the space to another.',
  },
  'wet-wood': {
    title: 'The framing is wet',
    meaning: 'Joists and subfloor hold more water than dry framing may.',
  },
  'wet-bearing': {
    title: 'Wood on masonry is wettest',
    meaning: 'Sills and girders on masonry read wetter than the joists.',
  },
  smell: {
    title: 'Musty smell',
    meaning: 'People smell it in the space or in the rooms.',
  },
  'soil-gas': {
    title: 'Radon is high',
    meaning: 'Radon in the house is at or above the level at which action is advised.',
  },
} as const;
