// Code.js as the platform meets it at each call: how large it is, and compiled, run and called once in a fresh context.
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { coldStart, type ColdStart } from '../bundle/coldStart';
import { declarationOf } from '../support/call';
import { median } from './numbers';
import { met, milliseconds, type Section } from './table';

const batches = 8;
const roundsOfBatch = 10;
const targetMilliseconds = 10;
const targetKilobytes = 150;

const kinds = {
  'a plain function': 'PRESSURE_ALTITUDE',
  geodesy: 'COURSE_LEG',
  magnetism: 'MAGNETIC_VARIATION',
  'a weather report': 'METAR_READ',
} as const;

const expressionOf = (name: string): string =>
  `${name}(${(declarationOf(name).examples[0]?.arguments ?? []).map((one) => JSON.stringify(one)).join(',')})`;

/** Scripts as long as Code.js that have nothing to do: what the platform's engine needs for the text alone. */
function emptyScripts(length: number): { readonly what: string; readonly text: string }[] {
  const answer = 'function answer(){return 1}\n';
  let unused = 'function unused(){';
  for (let number = 0; unused.length < length - answer.length; number += 1)
    unused += `function f${number}(a,b){return a.length>b?[a,{b:b}]:a[b]+"${number}"}\n`;
  return [
    { what: 'as long, one comment', text: `${answer}/*${'x'.repeat(length - answer.length - 4)}*/` },
    { what: 'as long, one function that nobody calls', text: `${answer}${unused}}` },
  ];
}

/** Contexts that are done with would make each later start slower than the one before. */
function sweeper(): () => void {
  setFlagsFromString('--expose_gc');
  return runInNewContext('gc') as () => void;
}

/** Of one kind of call: medians of the batches, and the least of all. */
function together(measured: readonly ColdStart[]): number[] {
  const parts = (['compile', 'run', 'call', 'total'] as const).map((part) => median(measured.map((one) => one[part])));
  return [...parts, Math.min(...measured.map(({ least }) => least))];
}

const judged = (total: number): string[] => [String(targetMilliseconds), (total / targetMilliseconds).toFixed(2), met(total <= targetMilliseconds)];

export function coldStarts(code: string): Section {
  const sweep = sweeper();
  const calls = [
    ...emptyScripts(code.length).map(({ what, text }) => ({ what, text, expression: 'answer()', measured: [] as ColdStart[] })),
    ...Object.entries(kinds).map(([kind, name]) => ({
      what: `${kind}: ${name}`,
      text: code,
      expression: expressionOf(name),
      measured: [] as ColdStart[],
    })),
  ];
  for (let batch = -1; batch < batches; batch += 1) {
    for (const { text, expression, measured } of calls) {
      sweep();
      const one = coldStart(text, expression, roundsOfBatch);
      // The first batch pays for what the process itself starts.
      if (batch >= 0) measured.push(one);
    }
  }
  const all = calls.map(({ what, measured }) => ({ what, times: together(measured) }));
  const empty = all[1]?.times ?? [];
  const ratio = (times: readonly number[], part: number): string => ((times[part] ?? Number.NaN) / (empty[part] ?? Number.NaN)).toFixed(2);
  const rows = all.map(({ what, times }) => [what, ...times.map(milliseconds), ratio(times, 3), ratio(times, 4), ...judged(times[3] ?? Number.NaN)]);
  return {
    title: 'Cold start of Code.js: compile, run and first call in a fresh V8 context, milliseconds',
    heads: ['first call of', 'compile', 'run', 'call', 'total', 'least', 'to empty', 'least to empty', 'target', 'total / target', ''],
    rows,
    notes: [
      `Medians of ${batches * roundsOfBatch} contexts each, the kinds in turn, so the parts need not add up; least is the quickest of all. The target is for the total. Empty: the one function that nobody calls, which the engine only reads over.`,
    ],
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
