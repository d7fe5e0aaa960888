/** One call of each calculator with everyday values, as shown in its help. */
export const EXAMPLES: Readonly<Record<string, string>> = {
  'air-state': 'temperature=72F relativeHumidity=65%',
  'surface-condensation': 'temperature=75F relativeHumidity=70% surfaceTemperature=62F',
  'wood-equilibrium': 'temperature=70F relativeHumidity=50%',
  'wood-humidity': 'temperature=70F moistureContent=15%',
  'meter-correction': 'reading=17% species=southern-pine temperature=55F',
  'mold-weeks': 'temperature=72F relativeHumidity=90% class=sensitive index=1',
  'ground-evaporation': 'temperature=70F relativeHumidity=70% groundTemperature=65F area=1200ft2',
  'design-load':
    'temperature=70F relativeHumidity=55% outdoorDewPoint=72F area=1500ft2 height=3ft airChanges=0.3 groundTemperature=66F',
  'pipe-fall': 'drop=6in run=12ft6-1/2in',
  convert: 'value=50cfm to=L/s',
};
