import { texts } from '../../text/texts.ts';

export const storageTexts = texts(
  {
    here: 'Your jobs are kept on this device only.',
    room: '{used} of about {quota} used.',
    persistent: 'The browser has promised not to clear them.',
    evictable:
      'The browser may clear them when the device runs out of space or the app is not used for a while. Ask it to keep them, or install the app, and export a file after each visit.',
    ask: 'Ask the browser to keep them',
    refused:
      'The browser did not promise it. Install the app on the home screen and ask again; until then export a file after each visit.',
    low: 'Less room is left than the photos of one visit need. Free some space before you go in.',
  },
  {
    here: 'Sus trabajos se guardan solo en este equipo.',
    room: '{used} de unos {quota} en uso.',
    persistent: 'El navegador prometió no borrarlos.',
    evictable:
      'El navegador los puede borrar si falta espacio o si la aplicación no se usa por un tiempo. Pídale que los conserve, o instale la aplicación, y exporte un archivo después de cada visita.',
    ask: 'Pedir al navegador que los conserve',
    refused:
      'El navegador no lo prometió. Instale la aplicación en la pantalla de inicio y pídalo otra vez; mientras tanto exporte un archivo después de cada visita.',
    low: 'Queda menos espacio del que ocupan las fotos de una visita. Libere espacio antes de entrar.',
  },
);
