// Code.js as the platform meets it at each call: how large it is, and compiled, run and called once in a fresh context.
import { declarationOf } from '../support/call';
import { coldStart } from '../bundle/coldStart';
import { met, milliseconds, type Section } from './table';

const rounds = 60;
const targetMilliseconds = 10;
const targetKilobytes = 150;

const kinds = { 'a plain function': 'PRESSURE_ALTITUDE', geodesy: 'COURSE_LEG', magnetism: 'MAGNETIC_VARIATION', 'a weather report': 'METAR_READ' } as const;

const expressionOf = (name: string): string => `${name}(${(declarationOf(name).examples[0]?.arguments ?? []).map((one) => JSON.stringify(one)).join(',')})`;

export function coldStarts(code: string): Section {
  // Compiles each text once before any is timed: the first of all pays for what the process itself starts.
  for (const name of Object.values(kinds)) coldStart(code, expressionOf(name), 3);
  const rows = Object.entries(kinds).map(([kind, name]) => {
    const { compile, run, call, total, least } = coldStart(code, expressionOf(name), rounds);
    return [`${kind}: ${name}`, ...[compile, run, call, total, least].map(milliseconds), String(targetMilliseconds), (total / targetMilliseconds).toFixed(2), met(total <= targetMilliseconds)];
  });
  return {
    title: 'Cold start of Code.js: compile, run and first call in a fresh V8 context, milliseconds',
    heads: ['first call of', 'compile', 'run', 'call', 'total', 'least', 'target', 'total / target', ''],
    rows,
    notes: [`Medians of ${rounds} contexts, so the parts need not add up; least is the quickest of all. The target is for the total.`],
  };
}

export function bundleSize(code: string): Section {
  const withoutComments = code.replace(/^\/\*[\s\S]*?\*\/\n/gm, '');
  const row = (what: string, text: string): string[] => {
    const kilobytes = Buffer.byteLength(text) / 1024;
    return [what, kilobytes.toFixed(1), String(targetKilobytes), (kilobytes / targetKilobytes).toFixed(2), met(kilobytes <= targetKilobytes)];
  };
  return {
    title: 'Size of Code.js, minified, KB',
    heads: ['what', 'measured', 'target', 'measured / target', ''],
    rows: [row('as pushed', code), row('without the comments of autocomplete', withoutComments)],
    notes: [],
  };
}
