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
      'US Department of Energy, EnergyPlus Auxiliary Programs, weather file (EPW) data dictionary: columns, units and ' +
      'marks for missing values',
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
} as const satisfies Record<string, Source>;
