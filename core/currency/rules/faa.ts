// Rules of the United States, Title 14 of the Code of Federal Regulations. Data only; rule.ts beside it says what each part means.
import { faaAircraft } from './parts/faaAircraft';
import { faaExperience } from './parts/faaExperience';
import { basicMedPapers, faaMedical } from './parts/faaMedical';
import { checksAndEndorsements, flightReview } from './parts/faaPapers';
import type { Authority } from './rule';

export const faa: Authority = {
  name: 'FAA',
  pilot: [...faaExperience, flightReview, faaMedical, ...checksAndEndorsements, ...basicMedPapers],
  aircraft: faaAircraft,
};
