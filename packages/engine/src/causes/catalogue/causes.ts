/** What brings water, smell or soil gas into a space: where the chain begins. */
export const causes = {
  'outdoor-air': {
    title: 'Humid outdoor air',
    meaning:
      'Vents, doors and leaks let outdoor air in; in summer it carries more water than the space can hold.',
  },
  'bare-ground': {
    title: 'Bare earth',
    meaning: 'Open ground gives off water all year, and more of it the drier the air above.',
  },
  'open-liner': {
    title: 'Gaps in the liner',
    meaning: 'Bare patches, open laps, loose edges and unwrapped piers leave ground open to the air.',
  },
  'surface-water': {
    title: 'Rain and roof water',
    meaning: 'Ground that falls toward the house, short spouts and sunk sills send rain to the wall.',
  },
  'ground-water': {
    title: 'Ground water',
    meaning: 'Water in the soil rises to the floor of the space, from a high water table or a hillside.',
  },
  'drain-fails': {
    title: 'Drain or pump fails',
    meaning: 'The drain lies too high, is silted or open, or the pump and its basin do not take the water.',
  },
  'plumbing-leak': {
    title: 'Leaking pipe',
    meaning: 'A supply or waste pipe drips or runs into the space.',
  },
  'dryer-exhaust': {
    title: 'Dryer or fan blows in',
    meaning: 'A clothes dryer, bath or kitchen exhaust ends in the space.',
  },
  condensate: {
    title: 'Condensate spills',
    meaning: 'A cooling coil or dehumidifier drops its water in the space instead of outside.',
  },
  'masonry-draws': {
    title: 'Masonry draws up water',
    meaning:
      'Block, brick and concrete in wet soil draw water up by capillarity and give it to air and wood.',
  },
  'cold-ducts': {
    title: 'Cold ducts and pipes',
    meaning: 'Ducts and pipes without enough insulation are colder than the air of the space can bear.',
  },
  'leaky-ducts': {
    title: 'Leaking ducts',
    meaning: 'Supply leaks chill what is round them; return leaks draw air of the space into the house.',
  },
  'winter-cold-edge': {
    title: 'Cold rim in winter',
    meaning: 'In frost the rim and the top of the walls are colder than the dew point of the air.',
  },
  'machine-pocket': {
    title: 'Machine dries a pocket',
    meaning:
      'The dehumidifier blows at a wall or takes in its own dry air, and stops before the space is dry.',
  },
  'machine-small': {
    title: 'Machine too small or set wrong',
    meaning:
      'At the real temperature of the space the machine takes out less than comes in, or its control is off.',
  },
  'air-blocked': {
    title: 'Air cannot get round',
    meaning: 'Partitions, low ducts and stores keep dry air from a part of the space.',
  },
  organics: {
    title: 'Wood scraps and droppings',
    meaning: 'Form boards, roots, droppings and old batts rot on the ground or under the sheet.',
  },
  'old-liner': {
    title: 'Wet layer between sheets',
    meaning: 'An old sheet or a soaked reinforced sheet holds water that turns foul.',
  },
  'floor-leaks': {
    title: 'Air rises through the floor',
    meaning: 'Warm rooms draw air up through holes in the floor, most in winter.',
  },
  'soil-way-in': {
    title: 'Soil gas finds a way',
    meaning: 'An open pit, seams and block cores let gas from the soil into the space.',
  },
  'wood-touches': {
    title: 'Wood near earth or in block',
    meaning: 'Joists, posts and girder ends touch or nearly touch earth or wet masonry.',
  },
  'wet-batts': {
    title: 'Batts hold water',
    meaning: 'Damp batts between the joists keep the subfloor wet.',
  },
  'drying-down': {
    title: 'Still drying since the work',
    meaning: 'Wood and walls of a newly closed space give off stored water for weeks.',
  },
} as const;
