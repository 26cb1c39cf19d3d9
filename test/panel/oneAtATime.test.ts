// The host is asked one question at a time, whatever the views do.
import { describe, expect, it } from 'vitest';
import type { PanelHost } from '../../addon/panel/host';
import { oneAtATime } from '../../addon/panel/oneAtATime';

describe('oneAtATime', () => {
  it('waits for the answer before it asks on, in the order of the questions, and a refusal stops none of them', async () => {
    const heard: string[] = [];
    const settle: (() => void)[] = [];
    const ask = (_: string, { formula }: { readonly formula: string }): Promise<{ readonly cell: string }> => {
      heard.push(formula);
      return new Promise((resolve, reject) => settle.push(() => (formula === '=B' ? reject(new Error('refused')) : resolve({ cell: formula }))));
    };
    const host = oneAtATime({ ask } as unknown as PanelHost);
    const [a, b, c] = ['=A', '=B', '=C'].map((formula) => host.ask('putFormula', { formula }));
    const turn = async (): Promise<void> => {
      await new Promise((resolve) => setTimeout(resolve));
    };
    await turn();
    expect(heard).toEqual(['=A']);
    settle[0]?.();
    expect(await a).toEqual({ cell: '=A' });
    await turn();
    expect(heard).toEqual(['=A', '=B']);
    settle[1]?.();
    await expect(b).rejects.toThrow('refused');
    await turn();
    settle[2]?.();
    expect(await c).toEqual({ cell: '=C' });
  });
});
