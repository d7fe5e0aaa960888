import type { Source } from '../sources/source.ts';

/** Where weather layouts, station statistics and the weather model come from. */
export const climateSources = {
  tmy3: {
    id: 'nrel-tmy3-2008',
    citation:
      'Wilcox and Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156, National Renewable Energy Laboratory for ' +
      'the US Department of Energy, 2008: typical years of months from 1976-2005; monthly statistics worked out here ' +
      'from the hourly files',
    provenance: 'computed',
  },
  epw: {
    id: 'doe-epw-data-dictionary',
    citation:
      'US Department of Energy, weather file (EPW) data dictionary: columns, units and marks for missing values',
    provenance: 'memory',
  },
  climateZones: {
    id: 'pnnl-17211-2015',
    citation:
      'Baechler et al., Guide to Determining Climate Regions by County, PNNL-17211, 2015 (zones as in ASHRAE 169-2006 ' +
      'and IECC 2012); the words cold-dry and subarctic-marine are descriptive only',
    provenance: 'read',
  },
  stationHumidity: {
    id: 'wmo-8-humidity',
    citation:
      'World Meteorological Organization, Guide to Instruments and Methods of Observation, WMO-No. 8, definition of ' +
      'relative humidity and dew point with respect to liquid water below freezing',
    provenance: 'memory',
  },
  groundTemperature: {
    id: 'kusuda-achenbach-1965',
    citation:
      'Kusuda and Achenbach, Earth Temperature and Thermal Diffusivity at Selected Stations in the United States, ' +
      'ASHRAE Transactions 71, 1965: undisturbed ground swings about a mean that stands near that of the air',
    provenance: 'memory',
  },
  clearSky: {
    id: 'haurwitz-1945',
    citation:
      'Haurwitz, Insolation in relation to cloudiness and cloud density, Journal of Meteorology 2, 1945: radiation of a ' +
      'cloudless sky from the height of the sun, in the form quoted later',
    provenance: 'memory',
  },
  sunPosition: {
    id: 'spencer-1971',
    citation:
      'Spencer, Fourier series representation of the position of the sun, Search 2, 1971: declination and equation of time',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
