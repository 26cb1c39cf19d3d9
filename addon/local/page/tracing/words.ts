// What the window says of known points and of lines, in sentences.
import type { FollowedLine, LineEnd } from '../../../tracing/followLine';
import type { FrameProblem } from '../../../tracing/knownPoints';
import type { StartProblem } from '../../../tracing/startOfLine';

export function frameSentence(problem: FrameProblem): string {
  switch (problem.kind) {
    case 'few':
      return `${problem.missing} more known ${problem.missing === 1 ? 'point is' : 'points are'} needed.`;
    case 'sameAcross':
      return 'All known points have the same value across the page. They must lie apart.';
    case 'sameUp':
      return 'All known points have the same value up the page. They must lie apart.';
    case 'sameValue':
      return 'Two known points have the same two values. Take one of them away.';
    case 'samePlace':
      return 'Two known points were clicked at one place. Click one of them again.';
    case 'nearLine':
      return 'The known points lie too near to a line. Click points in all four corners of the chart.';
    case 'crossed':
      return 'The known points go round another way than their values: two of them were confused. Click them again, each where its values meet.';
    case 'disagree':
      return `The known points disagree: point ${problem.point} lies ${Math.round(problem.pixels)} pixels beside where the others put it. Click it again, or look at the values at the ends. An axis whose steps grow smaller along it cannot be traced here.`;
  }
}

export const startSentences: Readonly<Record<StartProblem, string>> = {
  noLine: 'No dark line is near that place, beside the grid. Click on the line, or set points by clicks.',
  twoLines: 'Two lines meet near that place. Click where the line is alone.',
  faint: 'The line is too faint to be followed. Set points by clicks.',
};

const endWords: Readonly<Record<LineEnd, string>> = {
  lost: 'it ends or is lost there',
  crowded: 'another line, or a spot, runs into it there',
  hidden: 'the grid hides it there',
  edge: 'the known points end there',
  several: 'more than one line goes on there',
  long: 'it came to no end',
};

/** `from` and `to`: the inputs at its two ends, worded with their unit. */
export function followedSentence(ends: FollowedLine['ends'], from: string, to: string, turnsBack: boolean): string {
  const back = turnsBack ? ' It turns back, and only the longer part was taken.' : '';
  return `Followed from ${from} (${endWords[ends[0]]}) to ${to} (${endWords[ends[1]]}).${back} Look whether it is the right line all along.`;
}
