import { texts } from '../../text/texts.ts';

export const frozenTexts = texts(
  {
    title: 'Frozen states',
    help: 'A frozen state names every entry of this moment by its hash, so that it can be told later whether anything behind a report was altered. It is kept with the job and goes into its archive file; a report made from that file can be made of this state alone.',
    freeze: 'Freeze this state',
    entries: { one: '{count} entry', other: '{count} entries' },
    holds: 'Every entry is still there, unchanged.',
    later: { one: '{count} entry came later.', other: '{count} entries came later.' },
    broken: 'Not as it was frozen',
    fault: '{path}: found {found}, expected {expected}',
    refused: 'This device did not keep it. See how much room is left, then try again.',
    unread: 'The list of entries of this state cannot be read on this device. Nothing was changed.',
  },
  {
    title: 'Estados congelados',
    help: 'Un estado congelado nombra cada registro de este momento con su huella, para saber después si algo detrás de un informe se alteró. Se guarda con el trabajo y va en su archivo; un informe hecho con ese archivo puede hacerse solo de este estado.',
    freeze: 'Congelar este estado',
    entries: { one: '{count} registro', other: '{count} registros' },
    holds: 'Todos los registros siguen ahí, sin cambios.',
    later: { one: '{count} registro llegó después.', other: '{count} registros llegaron después.' },
    broken: 'No está como se congeló',
    fault: '{path}: se encontró {found}, se esperaba {expected}',
    refused: 'Este dispositivo no lo guardó. Vea cuánto espacio queda e intente de nuevo.',
    unread: 'No se puede leer en este dispositivo la lista de registros de este estado. No se cambió nada.',
  },
);
