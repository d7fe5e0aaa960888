import type { Provenance, Source } from '../sources/source.ts';
import type { CriterionSource } from './criterion.ts';

/**
 * Publications that the criteria and cautions lean on. The provenance here is the best that any part of the
 * publication has; each criterion carries the provenance of its own figure.
 */
export const criteriaSources = {
  irc: {
    id: 'irc',
    citation:
      'International Code Council, International Residential Code for One- and Two-Family Dwellings (IRC)',
    provenance: 'read',
  },
  iecc: {
    id: 'iecc',
    citation:
      'International Code Council, International Energy Conservation Code (IECC) and the same table of the IRC, as ' +
      'tabulated by Pacific Northwest National Laboratory, 2009-2021 IECC and IRC Minimum Insulation Requirements for New Homes',
    provenance: 'read',
  },
  imc: {
    id: 'imc',
    citation: 'International Code Council, International Mechanical Code (IMC), as adopted by Baltimore City',
    provenance: 'read',
  },
  ifgc: {
    id: 'ifgc',
    citation: 'International Code Council, International Fuel Gas Code (IFGC)',
    provenance: 'quoted',
  },
  upc: { id: 'upc', citation: 'Uniform Plumbing Code (UPC)', provenance: 'memory' },
  nec: { id: 'nec', citation: 'NFPA 70, National Electrical Code (NEC)', provenance: 'quoted' },
  nfip: {
    id: 'nfip',
    citation:
      'Federal Emergency Management Agency, NFIP Technical Bulletin 1 (2008) and glossary, proper openings',
    provenance: 'read',
  },
  femaTb11: {
    id: 'fema-tb-11',
    citation:
      'Federal Emergency Management Agency, Technical Bulletin 11, crawl space construction in flood hazard areas',
    provenance: 'memory',
  },
  washington: {
    id: 'wa-wac-51-51',
    citation: 'Washington Administrative Code, chapter 51-51 (state residential code)',
    provenance: 'read',
  },
  oregon: { id: 'or-orsc-2023', citation: 'Oregon Residential Specialty Code 2023', provenance: 'quoted' },
  northCarolina: {
    id: 'nc-residential',
    citation: 'North Carolina Residential Code, chapter 4',
    provenance: 'quoted',
  },
  southCarolina: {
    id: 'sc-regs-8',
    citation: 'South Carolina Code of Regulations, chapter 8, residential code modifications',
    provenance: 'read',
  },
  indiana: {
    id: 'in-675-iac-14',
    citation: 'Indiana Administrative Code 675 IAC 14-4.4 (2020 residential code)',
    provenance: 'read',
  },
  massachusetts: {
    id: 'ma-780-cmr',
    citation: 'Code of Massachusetts Regulations 780 CMR, radon appendix',
    provenance: 'read',
  },
  illinois: {
    id: 'il-32-iac-422',
    citation: 'Illinois Administrative Code 32, part 422 (radon)',
    provenance: 'quoted',
  },
  chicago: { id: 'chicago-18-29', citation: 'Municipal Code of Chicago, chapter 18-29', provenance: 'read' },
  chicagoArchived: {
    id: 'chicago-archived-combustion-air',
    citation: 'Building code of Chicago, archived text on combustion air taken from crawl spaces',
    provenance: 'read',
  },
  southCarolinaReport: {
    id: 'sc-cl-100',
    citation: 'South Carolina official wood infestation report, form CL-100',
    provenance: 'quoted',
  },
  doeSws2017: {
    id: 'doe-sws-2017',
    citation: 'US Department of Energy and NREL, Standard Work Specifications for Home Energy Upgrades',
    provenance: 'read',
  },
  wyoming: {
    id: 'wy-field-guide',
    citation: 'Wyoming weatherization field guide, radon page',
    provenance: 'read',
  },
  closedCrawlGuide: {
    id: 'closed-crawl-quick-reference',
    citation: 'Designing Closed Crawl Spaces: A Quick Reference, publicly funded research program',
    provenance: 'read',
  },
  cc1000: {
    id: 'aarst-cc-1000-2018',
    citation: 'ANSI/AARST CC-1000-2018, soil gas control in new buildings',
    provenance: 'read',
  },
  rmsLb: {
    id: 'aarst-rms-lb-2018',
    citation: 'ANSI/AARST RMS-LB-2018 (12/20), radon mitigation in schools and large buildings',
    provenance: 'read',
  },
  sgmSf: {
    id: 'aarst-sgm-sf-2017',
    citation: 'ANSI/AARST SGM-SF-2017 (12/20), soil gas mitigation in existing homes',
    provenance: 'read',
  },
  ccah: {
    id: 'aarst-ccah-2020',
    citation: 'ANSI/AARST CCAH-2020, soil gas control in new homes',
    provenance: 'read',
  },
  rrnc: {
    id: 'aarst-rrnc-2020',
    citation: 'ANSI/AARST RRNC-2020, rough-in of radon control in new homes',
    provenance: 'read',
  },
  epaRadon: {
    id: 'epa-radon-action-level',
    citation:
      "US Environmental Protection Agency, What is EPA's Action Level for Radon and What Does it Mean?",
    provenance: 'read',
  },
  epaRadonGuide: {
    id: 'epa-402-k-10-005',
    citation: "US Environmental Protection Agency, Consumer's Guide to Radon Reduction, 402-K-10-005",
    provenance: 'memory',
  },
  who2009: {
    id: 'who-radon-2009',
    citation:
      'World Health Organization, Handbook on Indoor Radon (2009), reference levels, as stated by US EPA',
    provenance: 'read',
  },
  astmE1745: {
    id: 'astm-e1745',
    citation:
      'ASTM E1745-17, plastic water vapor retarders used in contact with soil or fill under concrete slabs',
    provenance: 'quoted',
  },
  astmE1643: {
    id: 'astm-e1643',
    citation:
      'ASTM E1643-18a, selection, design, installation and inspection of water vapor retarders under concrete slabs',
    provenance: 'memory',
  },
  astmD4444: { id: 'astm-d4444', citation: 'ASTM D4444, hand-held moisture meters', provenance: 'memory' },
  aci302: {
    id: 'aci-302-2r-06',
    citation: 'American Concrete Institute, ACI 302.2R-06',
    provenance: 'memory',
  },
  doeDehumidifier: {
    id: 'cfr-10-430-32-v',
    citation:
      'Code of Federal Regulations, 10 CFR 430.32(v), energy conservation standards for dehumidifiers',
    provenance: 'memory',
  },
  epaMoisture: {
    id: 'epa-mold-course',
    citation: 'US Environmental Protection Agency, mold course, chapter 2: indoor relative humidity',
    provenance: 'quoted',
  },
  ashrae160in2009: {
    id: 'ashrae-160-2009',
    citation:
      'ASHRAE Standard 160-2009 criterion, as stated in Glass et al., Analysis of Improved Criteria for Mold Growth in ' +
      'ASHRAE Standard 160, ASTM STP 1599 (2017), abstract',
    provenance: 'read',
  },
  ashrae160in2016: { id: 'ashrae-160-2016', citation: 'ASHRAE Standard 160-2016', provenance: 'memory' },
  iso13788: {
    id: 'iso-13788-2012',
    citation: 'ISO 13788:2012, critical surface humidity',
    provenance: 'memory',
  },
  dewPoint: {
    id: 'dew-point-definition',
    citation:
      'Meaning of the dew point: water forms on a surface at or below it (ASHRAE Handbook - Fundamentals, ch. 1)',
    provenance: 'computed',
  },
  ps20: {
    id: 'ps-20',
    citation: 'Voluntary Product Standard PS 20, American Softwood Lumber Standard',
    provenance: 'memory',
  },
  epaMold: {
    id: 'epa-402-k-01-001',
    citation:
      'US Environmental Protection Agency, Mold Remediation in Schools and Commercial Buildings, 402-K-01-001',
    provenance: 'read',
  },
  s520: {
    id: 'iicrc-s520',
    citation: 'ANSI/IICRC S520, professional mold remediation',
    provenance: 'quoted',
  },
  borateLabel: {
    id: 'borate-label',
    citation:
      'Labels of borate (disodium octaborate tetrahydrate) wood treatments, as quoted on wood-treatment pages',
    provenance: 'quoted',
  },
  usfs133: {
    id: 'usfs-so-133',
    citation:
      'US Forest Service, Southern Forest Experiment Station, Preventing and Controlling Water-Conducting Rot in ' +
      'Buildings, Occasional Paper 133 (1954)',
    provenance: 'read',
  },
  pnnlFuel: {
    id: 'pnnl-fuel-appliances',
    citation:
      'Pacific Northwest National Laboratory, Building America Solution Center, Rooms Containing Fuel-Burning Appliances',
    provenance: 'read',
  },
  oshaConfined: {
    id: 'osha-1926-aa',
    citation:
      'US Occupational Safety and Health Administration, 29 CFR 1926 subpart AA, Confined Spaces in Construction, and its ' +
      'frequently asked questions; memorandum of 24 May 2016',
    provenance: 'read',
  },
  oshaConstruction: {
    id: 'osha-1926',
    citation: 'US Occupational Safety and Health Administration, 29 CFR 1926, construction standards',
    provenance: 'memory',
  },
  oshaSilica: {
    id: 'osha-1926-1153',
    citation:
      'US Occupational Safety and Health Administration, 29 CFR 1926.1153, respirable crystalline silica',
    provenance: 'read',
  },
  nioshAir: {
    id: 'niosh-rel',
    citation: '29 CFR 1926.1202 definitions of hazardous atmosphere, and NIOSH recommended exposure limits',
    provenance: 'memory',
  },
  niosh2005: {
    id: 'niosh-2005-109',
    citation: 'NIOSH 2005-109, Histoplasmosis: protecting workers at risk',
    provenance: 'memory',
  },
  niosh2016: {
    id: 'niosh-2016-106',
    citation: 'NIOSH 2016-106, heat and hot environments',
    provenance: 'memory',
  },
  epaVermiculite: {
    id: 'epa-atsdr-2003',
    citation:
      'US EPA and ATSDR, Current Best Practices for Vermiculite Attic Insulation (May 2003), and EPA guide of 2014',
    provenance: 'read',
  },
  epaLead: {
    id: 'cfr-40-745',
    citation: 'Code of Federal Regulations, 40 CFR 745 subpart E (renovation, repair and painting)',
    provenance: 'memory',
  },
  cdcRodents: {
    id: 'cdc-hantavirus',
    citation: 'US Centers for Disease Control and Prevention, hantavirus clean-up pages (2008)',
    provenance: 'read',
  },
  fifra: {
    id: 'fifra-12',
    citation: 'US pesticide law FIFRA, section 12(a)(2)(G), and the product label',
    provenance: 'memory',
  },
  respirators: {
    id: 'osha-1910-134',
    citation: '29 CFR 1910.134, respiratory protection',
    provenance: 'memory',
  },
  epaSewage: {
    id: 'epa-402-k-01-001-sewage',
    citation: 'US EPA 402-K-01-001, note on sewage to its table of water damage',
    provenance: 'quoted',
  },
  practice: { id: 'common-practice', citation: 'Common practice, no source', provenance: 'practice' },
} as const satisfies Record<string, Source>;

/** Cites a publication with the provenance of the figure taken from it. */
export function cite(
  publication: Exclude<keyof typeof criteriaSources, 'practice'>,
  provenance: Exclude<Provenance, 'practice'>,
  section?: string,
  edition?: string,
): CriterionSource {
  const { id, citation } = criteriaSources[publication];
  return {
    id,
    citation,
    ...(edition === undefined ? {} : { edition }),
    ...(section === undefined ? {} : { section }),
    provenance,
  };
}

/** The source of a row that is trade habit. */
export const commonPractice: CriterionSource = criteriaSources.practice;
