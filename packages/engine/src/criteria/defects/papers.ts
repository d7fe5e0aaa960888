import { once } from './bill-rule.ts';
import { defectsOf } from './defect.ts';

/** What should be on file. */
export const papers = defectsOf(
  'papers',
  [],
  [
    {
      key: 'papers-missing',
      name: { en: 'Papers missing', es: 'Faltan papeles' },
      seen: {
        en: 'No permit, no data sheet of the film, no pictures, no warranty, no label.',
        es: 'Sin permiso, sin ficha de la hoja, sin fotos, sin garantía, sin etiqueta.',
      },
      proof: { en: 'Checklist counted.', es: 'Cuente la lista.' },
      remedy: { en: 'Survey as built, file, label.', es: 'Levantamiento de lo hecho, archivo, etiqueta.' },
      criteria: ['LIN-16', 'RAD-12'],
      causes: ['never made'],
      consequences: ['disputes', 'a sale is held up'],
      severity: 1,
      gradedBecause: 'no harm to the space',
      bill: once('lot'),
      step: 'prove',
    },
    {
      key: 'radon-not-retested',
      name: {
        en: 'Radon not tested since the space was closed',
        es: 'Radón sin probar desde que se cerró el espacio',
      },
      seen: { en: 'No test on file after the work.', es: 'No hay prueba archivada después del trabajo.' },
      proof: { en: 'Date of the last test.', es: 'Fecha de la última prueba.' },
      remedy: { en: 'A short test now, a long one next.', es: 'Una prueba corta ahora, luego una larga.' },
      quantity: 'radonTestAgeYears',
      criteria: ['RAD-15'],
      causes: ['overlooked'],
      consequences: ['an unknown dose'],
      severity: 2,
      gradedBecause: 'unknown until tested',
      bill: once(),
      step: 'prove',
      caution: 'SAF-23',
      licensedTrade: 'radon-professional',
    },
  ],
);
