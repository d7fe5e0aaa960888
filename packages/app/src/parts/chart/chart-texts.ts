import { texts } from '../../text/texts.ts';

export const chartTexts = texts(
  { table: 'The same as a table', perRange: '{low} to {high}' },
  { table: 'Lo mismo en una tabla', perRange: '{low} a {high}' },
);
