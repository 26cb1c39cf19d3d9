// Present and recent weather in code: which groups there are.
// @source wmo-306, code table 4678; icao-annex-3, appendix 3, 4.4.2; fmh-1, table 12-2.

const precipitation = '(?:DZ|RA|SN|SG|PL|GR|GS|UP)';
const showering = '(?:RA|SN|PL|GR|GS|UP)';
/** Any intensity; then what has none; then what may be in the vicinity. */
const written = [
  `[-+]?(?:${precipitation}{1,3}|(?:SH|TS)${showering}{1,3}|FZ(?:DZ|RA|UP)${precipitation}{0,2}|BL(?:SN|SA|DU))`,
  '\\+?(?:FC|SS|DS)|TS|IC|BR|FU|HZ|SA|DU|PO|SQ|VA|PY|BLPY|(?:MI|BC|PR|FZ)?FG|DR(?:SN|SA|DU)',
  'VC(?:TS|SH|FG|FC|PO|VA|SS|DS|BL(?:SN|SA|DU))',
].join('|');
const weatherGroup = new RegExp(`^(?:${written})$`);
const recentGroup = new RegExp(`^RE(?:${written})$`);

/** The same code twice in a group is a slip. */
const isOnce = (codes: string): boolean => {
  const pairs = codes.match(/../g) ?? [];
  return new Set(pairs).size === pairs.length;
};

export const isWeather = (word: string): boolean => weatherGroup.test(word) && isOnce(word.replace(/^[-+]/, ''));

/** Recent weather has neither intensity nor vicinity. */
export const isRecentWeather = (word: string): boolean => recentGroup.test(word) && !/[-+]|^REVC/.test(word) && isOnce(word.slice(2));
