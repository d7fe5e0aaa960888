import type { Settings } from '../settings/settings.ts';

interface Words {
  readonly title: string;
  readonly text: string;
}

/** The standing cautions in Spanish, by their id. A test holds the list against that of the engine. */
export const SPANISH_CAUTIONS: Readonly<Record<string, Words>> = {
  'SAF-01': {
    title: 'Espacio confinado',
    text: 'Al espacio bajo la casa se puede entrar, pero es difícil salir y no está hecho para quedarse: eso lo hace un espacio confinado. Clasifíquelo antes de que alguien entre y planee cómo se saca a una persona.',
  },
  'SAF-02': {
    title: 'Espacio que requiere permiso',
    text: 'Aire malo, agua o tierra que puede tapar a alguien, una forma que atrapa u otro peligro grave, como cables pelados, lo hacen un espacio que requiere permiso. Escriba qué detiene la entrada y pare cuando suceda.',
  },
  'SAF-03': {
    title: 'Aire',
    text: 'Mida en la entrada oxígeno, gas inflamable, monóxido de carbono y ácido sulfhídrico con un medidor calibrado, y llévelo consigo. Salga cuando suene la alarma. Una buena lectura no promete nada para el minuto siguiente ni para el tramo siguiente.',
  },
  'SAF-04': {
    title: 'Trabajar solo',
    text: 'Nadie entra sin otra persona afuera, horas acordadas para llamar y un plan de rescate. Anote la entrada y la salida. Quien está afuera pide ayuda y no entra detrás.',
  },
  'SAF-05': {
    title: 'Electricidad y agua',
    text: 'Trate como energizado todo cable que esté en el agua o cerca de ella. Haga cortar la corriente y poner el candado en el tablero, o compruebe la protección de falla a tierra (GFCI), antes de que alguien se arrodille en agua. Nada de empalmes con corriente.',
  },
  'SAF-06': {
    title: 'Luz provisional',
    text: 'Use lámparas de batería, de bajo voltaje, o conectadas a un GFCI y con el foco protegido.',
  },
  'SAF-13': {
    title: 'Calor',
    text: 'Agua, descanso y sombra: arrastrarse con traje duplica el esfuerzo. Cuídense unos a otros y trabajen con el fresco de la mañana.',
  },
  'SAF-14': {
    title: 'Filos, viguetas bajas, mordeduras',
    text: 'Casco, rodilleras y mangas, guantes contra cortes, traje sellado en muñecas y tobillos. Mire antes de poner la mano.',
  },
  'SAF-25': {
    title: 'Olor a gas, inundación',
    text: 'Salga, no deje entrar a nadie, no toque interruptores y llame desde afuera a la compañía de gas o a emergencias.',
  },
  'SAF-07': {
    title: 'Asbesto',
    text: 'Suponga que el forro viejo de tubos, la cinta de ductos, las placas de cemento y la vermiculita tienen asbesto. No los toque ni los barra: tome una foto, pare y pida que los vea un contratista capacitado.',
  },
  'SAF-08': {
    title: 'Pintura con plomo',
    text: 'En una casa de antes de 1978 suponga que hay plomo en la pintura de soleras, puertas y pozos de ventana. Para alterarla por pago se necesita una empresa certificada y trabajo seguro con plomo.',
  },
  'SAF-09': {
    title: 'Excremento de roedores',
    text: 'El excremento puede transmitir hantavirus. Ventile el espacio al menos 30 minutos y aléjese mientras tanto. Nunca lo barra ni lo aspire en seco: mójelo 5 minutos con cloro, 1 parte en 9 de agua, y recójalo con guantes. Si hay mucho, se necesitan respiradores y una cuadrilla capacitada.',
  },
  'SAF-10': {
    title: 'Excremento de aves o murciélagos',
    text: 'El polvo del excremento puede transmitir histoplasmosis. Mójelo, use aspiradoras con filtro y respirador, o no entre.',
  },
  'SAF-11': {
    title: 'Polvo de sílice',
    text: 'Perforar bloque y romper losa suelta polvo de sílice; cuentan también los clavos y barras del borde de la lámina. El nivel de acción es 25 y el límite 50 microgramos por metro cúbico en 8 horas. Use herramientas con agua o con aspiradora de filtro.',
  },
  'SAF-12': {
    title: 'Polvo de moho',
    text: 'Cerca del moho use por lo menos respirador N-95, guantes y lentes, y más protección al quitarlo. Aísle el trabajo a partir de 10 pies cuadrados (0.93 m²). Esta herramienta dice área y estado, nunca que el moho sea inofensivo o tóxico.',
  },
  'SAF-20': {
    title: 'Pesticida, borato, limpiadores',
    text: 'Úselos solo como dice la etiqueta y con la licencia que pide, y mantenga fuera a la gente el tiempo indicado. No nebulice con la casa ocupada. Guarde la etiqueta y la hoja de datos de seguridad con el trabajo.',
  },
  'SAF-21': {
    title: 'Espuma rociada',
    text: 'Rociar espuma suelta isocianatos. La cuadrilla trabaja con aire suministrado y no hay nadie más en la casa durante el tiempo que indica el fabricante.',
  },
  'SAF-22': {
    title: 'Solventes y adhesivos en un espacio cerrado',
    text: 'Los vapores de solventes y adhesivos se encienden y aturden, y pueden volver el lugar un espacio que requiere permiso. Use productos de poco vapor y aire forzado, y nada de pilotos ni chispas.',
  },
  'SAF-24': {
    title: 'Aguas negras',
    text: 'Pare. Las aguas negras traen enfermedades y gas. Primero viene el plomero y después la desinfección con protección completa.',
  },
  'SAF-15': {
    title: 'Piezas con carga',
    text: 'No levante con gato, no corte ni saque una cuña sin un diseño. No se ponga debajo de una viga maestra que falló. El apuntalamiento va sobre bases y polines, y el piso se levanta despacio.',
  },
  'SAF-16': {
    title: 'Zanja junto a una zapata',
    text: 'Una zanja demasiado cerca o demasiado honda socava la zapata. Quédese por encima de una línea a 45 grados desde su borde, cave en tramos cortos y proteja toda zanja de más de 5 pies (1.5 m).',
  },
  'SAF-17': {
    title: 'Encerrar un aparato de gas',
    text: 'Un aparato de combustión que toma su aire del espacio se ahoga cuando se cierran las rejillas. Con aire interior necesita al menos 50 pies cúbicos por 1000 Btu/h (4.8 m³/kW), y un espacio sellado casi nunca los tiene. Primero va la salida directa o el aire de afuera.',
  },
  'SAF-18': {
    title: 'Retroceso de gases y monóxido de carbono',
    text: 'Los ventiladores y el sellado pueden regresar los gases de combustión a la casa. No cierre ninguna rejilla hasta que cada aparato tire bien con todos los ventiladores prendidos y con las puertas interiores abiertas y cerradas, y haya alarmas de monóxido de carbono.',
  },
  'SAF-19': {
    title: 'Rejillas que alimentan una llama',
    text: 'En casas viejas un aparato puede tomar su aire del espacio ventilado por una rejilla del piso. Encuentre esa rejilla antes de tapar cualquier otra.',
  },
  'SAF-23': {
    title: 'Radón y gas del suelo',
    text: 'Cerrar un espacio puede subir el radón en la casa, y un sistema de succión saca gas del suelo concentrado. Pruebe después del trabajo. La salida va al aire libre lejos de aberturas; el ventilador nunca va en el espacio ni en un cuarto.',
  },
};

/** What stands above every caution. */
const DEFERS = 'Mandan siempre el código local y el oficio con licencia.';

/** A caution in the language of the screen. */
export function cautionWords(
  caution: Words & { readonly id: string },
  language: Settings['language'],
): Words {
  const words = language === 'es' ? SPANISH_CAUTIONS[caution.id] : undefined;
  return words === undefined ? caution : { title: words.title, text: `${words.text} ${DEFERS}` };
}
