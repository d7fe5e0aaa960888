import { texts } from '../text/texts.ts';

export const padTexts = texts(
  {
    typeOne: 'Type a length',
    notRead: 'This is not read as a length.',
    fractions: 'Fractions of an inch',
    digits: 'Digits',
    repeat: 'Repeat last',
    repeatThis: 'Repeat {last}',
    back: 'Take the last one back',
    sign: 'Above or below zero',
    notNumber: 'This is not read as a number.',
  },
  {
    typeOne: 'Escriba una medida',
    notRead: 'No se entiende la medida. Ejemplos: 12\' 6 1/2", 150 1/2", 3.81 m',
    fractions: 'Fracciones de pulgada',
    digits: 'Números',
    repeat: 'Repetir la última',
    repeatThis: 'Repetir {last}',
    back: 'Borrar lo último',
    sign: 'Sobre o bajo cero',
    notNumber: 'No se entiende el número.',
  },
);
