import { texts } from '../text/texts.ts';

export const tourTexts = texts(
  {
    offer: 'First time here? A demo job shows in two minutes what this app does.',
    start: 'Show me around',
    notNow: 'Not now',
    region: 'Tour',
    count: '{step} of {steps}',
    next: 'Next',
    end: 'End the tour',
    plan: 'The plan is the center. What was seen and measured is drawn on it; the strip over it says whether all is saved and how much nobody has shown yet.',
    tools: 'Below are the tools for the thumb. On a desk they stand under the plan.',
    faults:
      'What is wrong: each criterion with its verdict and its proof. What nobody measured or photographed is "not shown", never "met".',
    causes: 'Why: where the water comes from, path by path, and how sure that is.',
    drying:
      'What will dry it: the year by the hour before and after, and which repairs buy the most dryness.',
    own: 'Now your own: type a street or a name and press Start. The demo jobs can stay or be removed.',
  },
  {
    offer: '¿Primera vez aquí? Un trabajo de ejemplo muestra en dos minutos lo que hace esta aplicación.',
    start: 'Ver el recorrido',
    notNow: 'Ahora no',
    region: 'Recorrido',
    count: '{step} de {steps}',
    next: 'Siguiente',
    end: 'Terminar el recorrido',
    plan: 'El plano es el centro. Lo que se vio y se midió está dibujado en él; la franja sobre él dice si todo está guardado y cuánto falta por mostrar.',
    tools: 'Abajo están las herramientas para el pulgar. En un escritorio están debajo del plano.',
    faults:
      'Qué está mal: cada criterio con su veredicto y su prueba. Lo que nadie midió ni fotografió "no se muestra"; nunca "cumple".',
    causes: 'Por qué: de dónde viene el agua, camino por camino, y qué tan seguro es.',
    drying: 'Qué lo secará: el año hora por hora antes y después, y qué reparaciones compran más sequedad.',
    own: 'Ahora el suyo: escriba una calle o un nombre y toque Empezar. Los ejemplos pueden quedarse o quitarse.',
  },
);
