import { texts } from '../../text/texts.ts';

/** Help by step, in the order of a visit. */
export const helpTexts = texts(
  {
    lead: 'A visit in the order in which it goes best. Every step can be left out and taken up later.',
    tour: 'Show me around the demo job',
    before: 'Before anybody goes in',
    before1:
      'A crawl space is a confined space: somebody stays outside, knows when you call, and does not follow in.',
    before2: 'Read the air at the opening with a calibrated meter and carry it. Get out when it alarms.',
    before3: 'Water near cords or cables: have the power switched off and locked at the panel first.',
    before4:
      'Leave old pipe and duct wrap alone until it was tested for asbestos. Wear a fitted respirator where there is mold or droppings.',
    before5:
      'Leaning piers, cracked girders and jacked posts are for a licensed engineer. Do not go under a load that may move.',
    before6:
      'With a fuel-burning appliance in the space, closing vents can send carbon monoxide upstairs: a licensed person tests it.',
    beforeNote:
      'This app never says that it is safe to enter. The employer, the safety authority and the local code decide.',
    plan: 'Draw the space',
    plan1: 'Tape the walls one after the other: length, then the turn. The app says how well they close.',
    plan2: 'Or start from a rectangle and add or cut parts, or set the corners on a grid.',
    plan3: 'Say what covers the floor. Then piers, ducts, vents, the access door, equipment and heights.',
    measure: 'Measure',
    measure1: 'Let the hygrometer settle before you read it, outdoors too: the difference is what counts.',
    measure2: 'Pins: along the grain, at the same depth. Name the species; the app corrects the reading.',
    measure3: 'Three joists in a row tell more than one: the place moves on by itself.',
    findings: 'Write down what is wrong',
    findings1: 'Pick what you see from the list, put it on the plan, measure it where it can be measured.',
    findings2: 'A picture beside each finding. What nobody measured or photographed is shown as "not shown".',
    pictures: 'Take pictures of everything',
    pictures1:
      'Owners who cannot crawl in see through your pictures: the farthest corner too. Mark where you stand and where you look.',
    pictures2: 'Pictures are kept exactly as taken, with their time and a fingerprint of their bytes.',
    result: 'Explain it and choose the repairs',
    result1: 'Why? shows where the water comes from, by path. Every figure can be asked why.',
    result2:
      'What will dry it? runs the year by the hour, before and after, and ranks the repairs. Dashed figures are assumed.',
    keep: 'Keep it',
    keep1: 'Saved means: written on this device. A dead battery takes at most the value being typed.',
    keep2: 'Export the job to a file at the end of each visit. The file holds everything, pictures too.',
    keep3: 'Undo takes back every step. Removed jobs can be brought back until you delete them for good.',
    screen: 'A wet or muddy screen',
    screen1:
      'Wipe it before you ask for more contrast. Turn the brightness up; bright sun has its own ground in the settings.',
    keys: 'Keyboard',
    keys1:
      'Tab reaches everything, Enter presses, Escape closes. On the plan, the question mark lists the keys.',
  },
  {
    lead: 'Una visita en el orden en que mejor sale. Puede saltar cualquier paso y volver después.',
    tour: 'Muéstreme el trabajo de ejemplo',
    before: 'Antes de que alguien entre',
    before1:
      'Un espacio bajo la casa es un espacio confinado: alguien se queda afuera, sabe cuándo va a llamar usted y no entra detrás.',
    before2:
      'Mida el aire en la entrada con un medidor calibrado y llévelo consigo. Salga cuando suene la alarma.',
    before3: 'Agua cerca de cables o cordones: primero haga cortar y bloquear la corriente en el panel.',
    before4:
      'No toque forros viejos de tubos o ductos antes de un análisis de asbesto. Use un respirador ajustado donde haya moho o excremento.',
    before5:
      'Pilares inclinados, vigas rajadas y postes con gato son para un ingeniero con licencia. No se meta debajo de una carga que pueda moverse.',
    before6:
      'Con un aparato de combustión en el espacio, cerrar las rejillas puede mandar monóxido de carbono a la casa: lo prueba una persona con licencia.',
    beforeNote:
      'Esta aplicación nunca dice que es seguro entrar. Deciden el patrón, la autoridad de seguridad y el código local.',
    plan: 'Dibujar el espacio',
    plan1:
      'Mida las paredes una tras otra: el largo y luego el giro. La aplicación dice qué tan bien cierran.',
    plan2: 'O empiece con un rectángulo y agregue o quite partes, o ponga las esquinas en una cuadrícula.',
    plan3: 'Diga qué cubre el piso. Luego pilares, ductos, rejillas, la puerta de acceso, equipos y alturas.',
    measure: 'Medir',
    measure1:
      'Deje que el termohigrómetro se asiente antes de leer, también afuera: lo que cuenta es la diferencia.',
    measure2:
      'Agujas: a lo largo de la veta, a la misma profundidad. Diga la especie; la aplicación corrige la lectura.',
    measure3: 'Tres viguetas seguidas dicen más que una: el lugar avanza solo.',
    findings: 'Anotar lo que está mal',
    findings1: 'Escoja de la lista lo que ve, póngalo en el plano y mídalo donde se pueda medir.',
    findings2:
      'Una foto junto a cada hallazgo. Lo que nadie midió ni fotografió aparece como "no se muestra".',
    pictures: 'Tomar fotos de todo',
    pictures1:
      'Los dueños que no pueden entrar ven por sus fotos: también la esquina más lejana. Marque dónde está y hacia dónde mira.',
    pictures2: 'Las fotos se guardan tal como se tomaron, con su hora y una huella de sus bytes.',
    result: 'Explicarlo y elegir las reparaciones',
    result1:
      '¿Por qué? muestra de dónde viene el agua, por camino. A cada cifra se le puede preguntar por qué.',
    result2:
      '¿Qué lo secará? calcula el año hora por hora, antes y después, y ordena las reparaciones. Las cifras subrayadas con rayitas son supuestas.',
    keep: 'Guardarlo',
    keep1:
      'Guardado quiere decir: escrito en este aparato. Una batería muerta se lleva a lo más el valor que se está escribiendo.',
    keep2:
      'Exporte el trabajo a un archivo al final de cada visita. El archivo lo tiene todo, también las fotos.',
    keep3:
      'Deshacer quita cada paso. Los trabajos quitados se pueden recuperar hasta que los borre para siempre.',
    screen: 'Pantalla mojada o con lodo',
    screen1:
      'Límpiela antes de pedir más contraste. Suba el brillo; para el sol fuerte hay un fondo propio en los ajustes.',
    keys: 'Teclado',
    keys1:
      'Tab llega a todo, Enter oprime, Escape cierra. En el plano, el signo de interrogación muestra las teclas.',
  },
);
