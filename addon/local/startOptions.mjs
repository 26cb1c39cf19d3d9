// The options of npm start, read before anything is installed or built: plain Node, and words in place of a stack trace.
import { homedir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

export const defaultFile = join(homedir(), '.rampwright', 'workbook.json');
const greatestPort = 65_535;

export const help = `npm start -- [options]

  --print           print the verdict of the demo trip with its reasons, and end
  --file <path>     the workbook file (else .rampwright/workbook.json in your home folder)
  --port <number>   the port to serve it at, 0 to ${greatestPort} (else 4760; a free one where it is taken)
  --lan             let other devices of the local network in too, each by a code shown here once
  --restore         where the file is gone or damaged: go on from its newest whole copy
  --new             where the file is gone or damaged: begin a new workbook with the invented demo
  --help            print this, and end
`;

const options = {
  print: { type: 'boolean', default: false },
  file: { type: 'string', default: defaultFile },
  port: { type: 'string', default: '4760' },
  lan: { type: 'boolean', default: false },
  restore: { type: 'boolean', default: false },
  new: { type: 'boolean', default: false },
  help: { type: 'boolean', short: 'h', default: false },
};

const inSentence = ({ code, message }) => {
  const said = /'([^' ,]+)/.exec(message)?.[1] ?? '';
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `There is no option ${said}.`;
  if (code === 'ERR_PARSE_ARGS_UNEXPECTED_POSITIONAL') return `"${said}" is no option.`;
  return /argument missing|ambiguous/.test(message) ? `${said} must be followed by its value.` : `${said} takes no value.`;
};

/** The values of the options, or `wrong`: what is wrong with them, in one sentence. */
export function readOptions(words) {
  try {
    const { values } = parseArgs({ args: words, options });
    if (!/^\d{1,5}$/.test(values.port) || Number(values.port) > greatestPort)
      return { wrong: `--port must be a whole number, 0 to ${greatestPort}; got "${values.port}".` };
    if (values.file.trim() === '') return { wrong: '--file must be the path of a file; got nothing.' };
    return { values: { ...values, port: Number(values.port) } };
  } catch (thrown) {
    return { wrong: inSentence(thrown) };
  }
}
