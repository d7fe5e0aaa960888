/** What follows if nothing is done; some may be seen already and then want an explanation themselves. */
export const consequences = {
  mold: { title: 'Mold', meaning: 'Mold grows on wood, paper and dust.' },
  decay: { title: 'Decay', meaning: 'Fungi take the strength out of wet wood.' },
  insects: { title: 'Termites and beetles', meaning: 'Damp wood draws wood-destroying insects.' },
  'floor-moves': { title: 'Floor cups or sags', meaning: 'Boards cup, doors bind, the floor goes down.' },
  'bearing-fails': { title: 'A bearing gives way', meaning: 'Sill, girder end or post loses its seat.' },
  'air-upstairs': {
    title: 'Air of the space in the rooms',
    meaning: 'Air of the space, with its smell and spores, comes up into the house.',
  },
  'batts-fall': { title: 'Insulation is lost', meaning: 'Batts get wet, heavy and fall.' },
  'machine-wears': {
    title: 'Machine runs and wears',
    meaning: 'The machine runs long hours and fails early.',
  },
  'lung-dose': {
    title: 'Radon is breathed',
    meaning: 'The dose to the lungs of those who live there rises.',
  },
} as const;
