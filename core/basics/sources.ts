// The publications that formulas, limits and tests cite: one entry each, cited by id.

export interface Source {
  readonly issuer: string;
  readonly title: string;
  readonly edition: string;
}

const entries = {
  'icao-7488': { issuer: 'ICAO', title: 'Doc 7488, Manual of the ICAO Standard Atmosphere', edition: 'third edition, 1993' },
  'ussa-1976': { issuer: 'NOAA, NASA, USAF', title: 'U.S. Standard Atmosphere', edition: '1976' },
  'icao-8168': { issuer: 'ICAO', title: 'Doc 8168, Procedures for Air Navigation Services: Aircraft Operations', edition: 'volumes I and II' },
  'icao-annex-15': { issuer: 'ICAO', title: 'Annex 15, Aeronautical Information Services', edition: 'chapter 6' },
  'icao-8126': { issuer: 'ICAO', title: 'Doc 8126, Aeronautical Information Services Manual', edition: 'sixth edition' },
  'sp-811': { issuer: 'NIST', title: 'Special Publication 811, Guide for the Use of the International System of Units', edition: '2008' },
  phak: { issuer: 'FAA', title: "FAA-H-8083-25, Pilot's Handbook of Aeronautical Knowledge", edition: '25A and 25B' },
  'weight-balance-handbook': { issuer: 'FAA', title: 'FAA-H-8083-1, Weight and Balance Handbook', edition: '1B' },
  aim: { issuer: 'FAA', title: 'Aeronautical Information Manual', edition: '20 April 2023' },
  'safety-sense-7': { issuer: 'UK CAA', title: 'Safety Sense Leaflet 7, Aeroplane Performance', edition: '7c, January 2013' },
  'eu-965-2012': { issuer: 'EU', title: 'Regulation 965/2012 (air operations), CAT.POL.A and its guidance material', edition: 'performance class B' },
  'cfr-91-117': { issuer: 'FAA', title: '14 CFR 91.117, Aircraft speed', edition: 'paragraph (a)' },
  'cfr-135-385': {
    issuer: 'FAA',
    title: '14 CFR 135.385, Large transport category airplanes: landing limitations at destination',
    edition: 'paragraph (b)',
  },
  'usn-p821': { issuer: 'US Navy', title: 'CNATRA P-821, Instrument Navigation', edition: 'figure 3-8' },
  'karney-2013': { issuer: 'C. F. F. Karney', title: 'Algorithms for geodesics, Journal of Geodesy 87', edition: '2013' },
  'wmm-2025': { issuer: 'NOAA NCEI, British Geological Survey', title: 'The US/UK World Magnetic Model for 2025-2030', edition: '2025' },
  'terminal-procedures': { issuer: 'FAA', title: 'Terminal Procedures Publication, rate of climb and descent tables', edition: 'reprinted' },
  'iso-6709': { issuer: 'ISO', title: '6709, Standard representation of geographic point location by coordinates', edition: '1983 and later' },
  'icao-4444': { issuer: 'ICAO', title: 'Doc 4444, Procedures for Air Navigation Services: Air Traffic Management', edition: 'appendix 2, item 15' },
  'icao-annex-3': {
    issuer: 'ICAO',
    title: 'Annex 3, Meteorological Service for International Air Navigation',
    edition: 'appendix 3, METAR and SPECI',
  },
  'icao-annex-3-taf': {
    issuer: 'ICAO',
    title: 'Annex 3, Meteorological Service for International Air Navigation',
    edition: 'appendix 5, aerodrome forecasts',
  },
  'icao-annex-14': { issuer: 'ICAO', title: 'Annex 14, Aerodromes', edition: 'volume I, attachment A, section 6, from memory' },
  'wmo-306': { issuer: 'WMO', title: 'No. 306, Manual on Codes', edition: 'volume I.1, FM 15, FM 16, FM 51 and code table 4678' },
  'cfr-91-169': { issuer: 'FAA', title: '14 CFR 91.169, IFR flight plan: information required', edition: 'paragraph (b)' },
  'fmh-1': {
    issuer: 'NOAA',
    title: 'Federal Meteorological Handbook No. 1, Surface Weather Observations and Reports',
    edition: 'chapter 12, coding',
  },
  'nasa-rp-1046': { issuer: 'NASA', title: 'Reference Publication 1046, Measurement of Aircraft Speed and Altitude (W. Gracey)', edition: '1980' },
  'alduchov-1996': {
    issuer: 'O. A. Alduchov, R. E. Eskridge',
    title: 'Improved Magnus form approximation of saturation vapor pressure, Journal of Applied Meteorology 35',
    edition: '1996',
  },
  'wmo-8': { issuer: 'WMO', title: 'No. 8, Guide to Instruments and Methods of Observation', edition: 'volume I, chapter 4' },
  'ais-airac-2020': { issuer: 'Polish Air Navigation Services Agency, AIS', title: 'AIRAC publication dates', edition: '2020' },
  'faa-cut-off-dates': { issuer: 'FAA', title: 'Aeronautical Data Team, cut-off dates', edition: '2023 to 2026' },
  'shimrat-1962': {
    issuer: 'M. Shimrat',
    title: 'Algorithm 112: position of point relative to polygon, Communications of the ACM 5',
    edition: '1962',
  },
  'cormen-algorithms': {
    issuer: 'T. H. Cormen, C. E. Leiserson, R. L. Rivest, C. Stein',
    title: 'Introduction to Algorithms',
    edition: 'third edition, 2009',
  },
  'cfr-61-23': { issuer: 'FAA', title: '14 CFR 61.23, Medical certificates: requirement and duration', edition: 'paragraph (d)' },
  'cfr-61-51': { issuer: 'FAA', title: '14 CFR 61.51, Pilot logbooks', edition: 'paragraph (b), from memory' },
  'cfr-61-56': { issuer: 'FAA', title: '14 CFR 61.56, Flight review', edition: 'paragraphs (c) to (e)' },
  'cfr-61-113': {
    issuer: 'FAA',
    title: '14 CFR 61.113, Private pilot privileges and limitations: pilot in command',
    edition: 'paragraph (i), amended 18 November 2024 (89 FR 90572)',
  },
  'cfr-61-57': { issuer: 'FAA', title: '14 CFR 61.57, Recent flight experience: pilot in command', edition: 'paragraphs (a) to (d)' },
  'cfr-61-58': { issuer: 'FAA', title: '14 CFR 61.58, Pilot-in-command proficiency check', edition: 'paragraph (a)' },
  'cfr-61-31': {
    issuer: 'FAA',
    title: '14 CFR 61.31, Type rating requirements, additional training, and authorization requirements',
    edition: 'from memory',
  },
  'fr-2025-13972': {
    issuer: 'FAA',
    title: 'Modernization of Special Airworthiness Certification, 2025-13972',
    edition: 'sport pilots, 22 October 2025, from quotations',
  },
  'fr-2022-25289': { issuer: 'FAA', title: 'Increase the Duration of Aircraft Registration, 87 FR 71210', edition: 'effective 23 January 2023' },
  'ac-68-1': { issuer: 'FAA', title: 'AC 68-1A, BasicMed', edition: 'example dates' },
  'part-fcl': {
    issuer: 'European Union',
    title: 'Regulation 1178/2011, Annex I (Part-FCL)',
    edition: 'FCL.060, FCL.140.A, FCL.625, FCL.740, FCL.740.A',
  },
  'uk-part-fcl': {
    issuer: 'UK CAA',
    title: 'UK Regulation 1178/2011, Annex I (Part-FCL)',
    edition: 'FCL.060 of March 2022; FCL.740.A since 1 October 2025 (SI 2025/878), as the CAA gives it',
  },
  'uk-part-med': { issuer: 'UK CAA', title: 'UK Regulation 1178/2011, Annex IV (Part-MED)', edition: 'MED.A.045 of November 2020' },
  'uk-ano-2016': {
    issuer: 'United Kingdom',
    title: 'The Air Navigation Order 2016 (SI 2016/765), schedule 8, part 3',
    edition: 'as made; the amendments of 1 October 2025 not seen',
  },
  'uk-medical-declaration': {
    issuer: 'UK CAA',
    title: 'Medical requirements for private pilots: pilot medical declaration',
    edition: 'page of the authority, from quotations of 2022',
  },
  'uk-part-ml': { issuer: 'UK CAA', title: 'UK Regulation 1321/2014, Annex Vb (Part-ML)', edition: 'ML.A.901, regulatory library of the CAA' },
  'part-med': { issuer: 'European Union', title: 'Regulation 1178/2011, Annex IV (Part-MED)', edition: 'MED.A.045' },
  'eu-1182-71': {
    issuer: 'European Union',
    title: 'Regulation 1182/71, rules applicable to periods, dates and time limits',
    edition: 'article 3, from memory',
  },
  'largest-remainder': {
    issuer: 'M. L. Balinski, H. P. Young',
    title: 'Fair Representation, the method of largest remainders (Hamilton)',
    edition: 'second edition, 2001, from memory',
  },
  'iso-4217': { issuer: 'ISO', title: '4217, Codes for the representation of currencies', edition: 'minor units, from memory' },
  'cfr-91-151': { issuer: 'FAA', title: '14 CFR 91.151, Fuel requirements for flight in VFR conditions', edition: 'paragraphs (a) and (b)' },
  'cfr-91-167': { issuer: 'FAA', title: '14 CFR 91.167, Fuel requirements for flight in IFR conditions', edition: 'paragraphs (a) and (b)' },
  'cfr-91-171': { issuer: 'FAA', title: '14 CFR 91.171, VOR equipment check for IFR operations', edition: 'paragraph (a)' },
  'cfr-91-207': { issuer: 'FAA', title: '14 CFR 91.207, Emergency locator transmitters', edition: 'paragraphs (c) and (d)' },
  'cfr-91-409': { issuer: 'FAA', title: '14 CFR 91.409, Inspections', edition: 'paragraphs (a) to (d); (c) from memory' },
  'cfr-91-411': {
    issuer: 'FAA',
    title: '14 CFR 91.411, Altimeter system and altitude reporting equipment tests and inspections',
    edition: 'paragraph (a)',
  },
  'cfr-91-413': { issuer: 'FAA', title: '14 CFR 91.413, ATC transponder tests and inspections', edition: 'paragraph (a)' },
  'cfr-49-180-209': {
    issuer: 'US DOT',
    title: '49 CFR 180.209, Requirements for requalification of specification cylinders',
    edition: 'paragraph (a), table 1, text of September 2017',
  },
  'part-nco': {
    issuer: 'European Union',
    title: 'Regulation 965/2012, Annex VII (Part-NCO)',
    edition: 'NCO.OP.125 as it stood before 30 October 2022 (United Kingdom: 30 October 2025)',
  },
  'part-ml': { issuer: 'European Union', title: 'Regulation 1321/2014, Annex Vb (Part-ML)', edition: 'ML.A.901, as kept in the United Kingdom' },
  'meeus-1998': {
    issuer: 'J. Meeus',
    title: 'Astronomical Algorithms',
    edition: 'second edition, 1998; from memory, as in the NOAA solar calculator',
  },
  'meeus-1979': { issuer: 'J. Meeus', title: 'Astronomical Formulae for Calculators', edition: 'chapter 18, from memory' },
  'usno-definitions': { issuer: 'US Naval Observatory', title: 'Rise, set, and twilight definitions', edition: '2004 and later' },
  'cfr-1-1': { issuer: 'FAA', title: '14 CFR 1.1, General definitions', edition: '"night"' },
  'cfr-91-211': { issuer: 'FAA', title: '14 CFR 91.211, Supplemental oxygen', edition: 'paragraph (a)' },
  'part-nco-oxygen': {
    issuer: 'European Union',
    title: 'Regulation 965/2012, Annex VII (Part-NCO)',
    edition: 'NCO.OP.190(b)',
  },
  'common-practice': { issuer: '', title: 'Common practice, no source', edition: '' },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof entries;

export const sources: Readonly<Record<SourceId, Source>> = entries;
