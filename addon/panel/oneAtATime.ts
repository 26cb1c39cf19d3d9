// Two views may ask at once, and a host must not read a workbook that it is just changing: each question waits for the last.
import type { PanelHost } from './host';

export function oneAtATime(host: PanelHost): PanelHost {
  let last: Promise<unknown> = Promise.resolve();
  const { traceChart } = host;
  return {
    ...(traceChart && { traceChart }),
    ask: (question, given, watch) => {
      const asked = last.then(() => host.ask(question, given, watch));
      last = asked.catch(() => undefined);
      return asked;
    },
  };
}
