import { texts } from '../../text/texts.ts';

export const calculatorsTexts = texts(
  {
    choose: 'Choose a question.',
    all: 'All calculators',
    unitHint: 'With its unit: {units}',
    pad: 'Type with the pad',
    result: 'Result',
    waiting: 'Fill in what is missing to see the result.',
    issue: 'expected {expected}',
    sources: 'Sources',
    yes: 'yes',
    no: 'no',
  },
  {
    choose: 'Elija una pregunta.',
    all: 'Todas las calculadoras',
    unitHint: 'Con su unidad: {units}',
    pad: 'Escribir con el teclado grande',
    result: 'Resultado',
    waiting: 'Complete lo que falta para ver el resultado.',
    issue: 'se esperaba {expected}',
    sources: 'Fuentes',
    yes: 'sí',
    no: 'no',
  },
);
