// What is asked about the text itself, before any table is seen in it: what a comma, a point or a blank between figures is.
import type { PasteAnswers, Pasted, PasteQuestion } from '../workbook/pasted/readPasted';
import { ChoiceField } from './choiceField';

interface PasteQuestionsProps {
  readonly text: string;
  readonly pasted: Pasted;
  /** The text read by other answers. */
  readonly readBy: (answers: PasteAnswers) => Pasted;
  readonly answers: PasteAnswers;
  readonly onAnswers: (answers: PasteAnswers) => void;
}

const names = { ',': 'commas', '.': 'points' } as const;
const listed = (lines: readonly number[]): string =>
  lines.length > 8 ? `${lines.slice(0, 8).join(', ')} and ${lines.length - 8} more` : lines.join(', ');

function inSentence(question: PasteQuestion, spaces: PasteAnswers['spaces']): string | undefined {
  switch (question.kind) {
    case 'width':
      return `Line ${listed(question.rows)}: another number of columns than the ${question.usual} of most lines. Put a dash where the manual prints nothing.`;
    case 'unreadable':
      return `Line ${question.row}, column ${question.column}: "${question.text}" is no number. Mend it above.`;
    case 'spaces':
      return spaces === 'thousands'
        ? `Line ${listed(question.rows)}: a single blank parts columns and thousands alike. Part the columns above with two blanks or tabs.`
        : undefined;
    case 'sign':
      return undefined;
  }
}

/** A blank that was found to part columns is asked for no more, but can still be answered otherwise. */
const mayHaveBlanks = (text: string): boolean => /(?:^|[^\d.,])[1-9]\d{0,2}[ \u00a0\u202f]\d{3}(?!\d)/m.test(text) && !/[\t;|]/.test(text);

export function PasteQuestions({ text, pasted, readBy, answers, onAnswers }: PasteQuestionsProps) {
  const signs = ([',', '.'] as const).filter(
    (sign) => answers[names[sign]] !== undefined || pasted.questions.some((one) => one.kind === 'sign' && one.sign === sign),
  );
  // Answered too, the question shows what it is about.
  const example = (sign: ',' | '.') =>
    readBy({ ...answers, [names[sign]]: undefined }).questions.flatMap((one) => (one.kind === 'sign' && one.sign === sign ? [one] : []))[0];
  const blanks = answers.spaces !== undefined || (mayHaveBlanks(text) && pasted.questions.some(({ kind }) => kind === 'spaces'));
  const sentences = pasted.questions.flatMap((question) => inSentence(question, answers.spaces) ?? []);
  return (
    <>
      {blanks && (
        <ChoiceField
          label="A blank between figures, as in 1 250"
          value={answers.spaces}
          choices={[
            { value: 'columns', label: 'parts two columns' },
            { value: 'thousands', label: 'is inside one number' },
          ]}
          onAnswer={(spaces) => onAnswers({ ...answers, spaces: spaces as 'columns' })}
        />
      )}
      {signs.map((sign) => {
        const open = example(sign);
        if (open === undefined) return undefined;
        const cells = open.cells === 1 ? '1 cell' : `${open.cells} cells`;
        return (
          <ChoiceField
            key={sign}
            label={`${open.text} (${cells}) is`}
            value={answers[names[sign]]}
            choices={[
              { value: 'thousands', label: String(open.thousands) },
              { value: 'decimals', label: String(open.decimals) },
            ]}
            onAnswer={(value) => onAnswers({ ...answers, [names[sign]]: value as 'thousands' })}
          />
        );
      })}
      {sentences.map((sentence) => (
        <p key={sentence} class="problem">
          {sentence}
        </p>
      ))}
    </>
  );
}
