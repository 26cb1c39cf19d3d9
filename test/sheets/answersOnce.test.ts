// After an edit a formula is worked out only where something it reads has changed, and then once, or twice where it had to read a spill that came after it; the engine as it comes works most
// of the workbook out twice. A formula left out by mistake would show in randomEdits.test.ts and in harness.test.ts.
import { createRequire } from 'node:module';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import type { EngineModule } from '../../addon/local/engine/engineValues';
import { sheetTemplates } from '../../sheets-templates';
import { tripRows } from '../../sheets-templates/trip/rows';

const engine = createRequire(import.meta.url)('@univerjs/engine-formula') as EngineModule;
let workbook: HeadlessWorkbook;
beforeAll(async () => {
  workbook = await openHeadless(sheetTemplates);
});
afterAll(() => workbook.dispose());

/** How often each formula answers while the work is done. */
async function answersDuring(work: () => Promise<void>): Promise<number[]> {
  const answers = new Map<string, number>();
  const runtimes = engine.FormulaRuntimeService.prototype;
  const { setRuntimeData } = runtimes;
  const watch = vi.spyOn(runtimes, 'setRuntimeData').mockImplementation(function count(this: typeof runtimes, answer) {
    const cell = `${this.currentSubUnitId} ${this.currentRow} ${this.currentColumn}`;
    answers.set(cell, (answers.get(cell) ?? 0) + 1);
    setRuntimeData.call(this, answer);
  });
  await work();
  watch.mockRestore();
  return [...answers.values()];
}

it('is true of an edit that the whole trip hangs on', async () => {
  const answers = await answersDuring(() => workbook.set('Trip sheet', { [`B${tripRows.groundspeed}`]: 131 }));
  expect(answers.length).toBeGreaterThan(80);
  expect(Math.max(...answers)).toBe(2);
  expect(answers.filter((times) => times > 1).length).toBeLessThan(answers.length / 4);
});

it('is true of an edit that nothing hangs on: the clock is asked, and no verdict is worked out for it', async () => {
  const answers = await answersDuring(() => workbook.set('Start', { H40: 'a remark' }));
  expect(answers.length).toBeGreaterThan(0);
  expect(answers.length).toBeLessThan(20);
});
