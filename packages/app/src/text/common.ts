import { texts } from './texts.ts';

/** Words that every screen needs. */
export const commonTexts = texts(
  {
    back: 'Back',
    cancel: 'Cancel',
    close: 'Close',
    delete: 'Delete',
    done: 'Done',
    undo: 'Undo',
    redo: 'Redo',
    retry: 'Try again',
    why: 'Why?',
    loading: 'Opening …',
    computing: 'Computing …',
    met: 'met',
    notMet: 'not met',
    notShown: 'not shown',
    assumed: 'assumed',
    caution: 'Caution',
    failedScreen: 'This part of the app could not be loaded. Nothing that was saved is lost. Try again.',
    fullFault: 'The storage of this phone is full. Free some space or export the job, then try again.',
    blockedFault: 'Another tab of this app holds the data. Close the other tabs, then try again.',
    newerFault: 'A newer version of this app has changed the data. Close all tabs and open the app again.',
    failedFault:
      'The browser could not store this. In a private window nothing is kept; use a normal window, then try again.',
  },
  {
    back: 'Atrás',
    cancel: 'Cancelar',
    close: 'Cerrar',
    delete: 'Borrar',
    done: 'Listo',
    undo: 'Deshacer',
    redo: 'Rehacer',
    retry: 'Intentar otra vez',
    why: '¿Por qué?',
    loading: 'Abriendo …',
    computing: 'Calculando …',
    met: 'cumple',
    notMet: 'no cumple',
    notShown: 'no se muestra',
    assumed: 'supuesto',
    caution: 'Precaución',
    failedScreen:
      'No se pudo cargar esta parte de la aplicación. No se perdió nada de lo guardado. Intente otra vez.',
    fullFault:
      'El almacenamiento de este teléfono está lleno. Libere espacio o exporte el trabajo e intente otra vez.',
    blockedFault:
      'Otra pestaña de esta aplicación tiene los datos. Cierre las otras pestañas e intente otra vez.',
    newerFault:
      'Una versión más nueva de la aplicación cambió los datos. Cierre todas las pestañas y abra la aplicación otra vez.',
    failedFault:
      'El navegador no pudo guardar esto. En una ventana privada no se guarda nada; use una ventana normal e intente otra vez.',
  },
);
