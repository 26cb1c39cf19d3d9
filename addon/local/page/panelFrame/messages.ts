// What travels between the panel's frame and the page round it.
import type { PanelReply } from '../../../panel/host';

export interface QuestionMessage {
  readonly id: number;
  readonly question: string;
  readonly given: unknown;
}

export interface ReplyMessage {
  readonly id: number;
  readonly reply: PanelReply<unknown>;
}

const hasNumber = (data: unknown): data is { readonly id: number } =>
  typeof data === 'object' && data !== null && 'id' in data && typeof data.id === 'number';

export const isQuestionMessage = (data: unknown): data is QuestionMessage =>
  hasNumber(data) && 'question' in data && typeof data.question === 'string' && 'given' in data;

export const isReplyMessage = (data: unknown): data is ReplyMessage =>
  hasNumber(data) && 'reply' in data && typeof data.reply === 'object' && data.reply !== null;
