// Follows a run of the script by asking after it again and again, one question at a time, until its answer is there.
import type { StopSignal, Watch } from '../../panel/host';
import type { RunAttended } from '../panelApi';

/** Milliseconds between an answer and the next question. */
const pause = 1500;

/** Ends sooner where the signal comes. */
const waited = (signal: StopSignal): Promise<void> =>
  new Promise((resolve) => {
    const timer = setTimeout(resolve, pause);
    signal.addEventListener(
      'abort',
      () => {
        clearTimeout(timer);
        resolve();
      },
      { once: true },
    );
  });

/** `attend` asks how far the run is, and tells it to stop. A question that fails is asked again: only the answer of the run itself counts. */
export async function followRun<Answer>(
  answer: Promise<Answer>,
  { onProgress, stop }: Watch,
  attend: (stop: boolean) => Promise<RunAttended>,
): Promise<Answer> {
  const state = { over: false, toldToStop: false };
  const follow = async (): Promise<void> => {
    while (!state.over) {
      if (state.toldToStop || !stop.aborted) await waited(stop);
      if (state.over) return;
      state.toldToStop = stop.aborted;
      const { progress } = await attend(state.toldToStop).catch((): RunAttended => ({ progress: null }));
      if (progress !== null && !state.over && !stop.aborted) onProgress(progress);
    }
  };
  void follow();
  try {
    return await answer;
  } finally {
    state.over = true;
  }
}
