/** Title of each sign and how it is taken, in Spanish, by the engine's key. English comes with the assessment. */
export const SIGN_SPANISH: Readonly<Record<string, readonly [title: string, how: string]>> = {
  'vents-open': ['Rejillas abiertas', 'Recorra todas las rejillas y busque luz de día o humo que se mueva.'],
  'access-door-seals': [
    'La puerta de acceso sella',
    'Cierre la puerta y busque luz de día; pase humo por el empaque.',
  ],
  'dew-point-over-outdoor': [
    'Punto de rocío adentro sobre el de afuera',
    'Lea temperatura y humedad en el espacio y a la sombra afuera en la misma hora, sin máquina encendida.',
  ],
  'outdoor-air-over-year': [
    'El aire de afuera trae agua en el año',
    'Corra el año hora por hora y sume el agua del aire de afuera.',
  ],
  'summer-over-winter': [
    'Verano más húmedo que invierno',
    'Compare la humedad media de junio a agosto con la de diciembre a febrero.',
  ],
  'vents-covered-for-days': [
    'El aire se seca con las rejillas tapadas',
    'Con tiempo húmedo de verano tape con plástico todas las rejillas tres días y deje un registrador adentro. Nunca donde un aparato de combustión toma aire del espacio.',
  ],
  'bare-share': [
    'Parte descubierta del piso',
    'Mida cada parte descubierta y divida entre el área del piso.',
  ],
  'ground-look': [
    'Qué tan mojada se ve la tierra, 0 grava a 5 agua',
    'Vea y toque: grava seca 0, costra pálida 1, normal 2, oscura y húmeda 3, mojada 4, agua 5.',
  ],
  'seams-sealed': ['Las uniones están selladas', 'Pase la mano por cada unión y levante la cinta suelta.'],
  'edge-sealed': [
    'El borde de la membrana está sellado a los muros',
    'Apriete y jale a lo largo del borde en cada muro.',
  ],
  'dryer-ends-inside': [
    'Una secadora o un ventilador termina en el espacio',
    'Prenda la secadora y cada ventilador de baño y cocina y siga su ducto hasta el final.',
  ],
  'closed-lately': [
    'Se cerró en los últimos tres meses',
    'Pregunte la fecha de la obra o léala en los papeles.',
  ],
  'radon-system': ['Succión bajo la membrana', 'Busque un tubo que sale de la membrana y lea su manómetro.'],
  'pit-lid-sealed': [
    'La tapa del foso es hermética',
    'Pase humo alrededor de la tapa, del cable y del tubo.',
  ],
  'grade-falls-away': ['Caída del terreno afuera', 'Nivele desde el muro hasta 10 pies (3 m) en cada lado.'],
  'spout-distance': [
    'Distancia del muro a la que sale el agua del techo',
    'Mida del muro al final de cada bajante.',
  ],
  'water-follows-rain': [
    'El agua llega o sube después de la lluvia',
    'Marque la orilla del agua; vuelva a ver dentro de un día después de la próxima lluvia fuerte.',
  ],
  'hose-brings-water': [
    'Una manguera junto al muro mete agua',
    'Deje correr una manguera media hora al pie del bajante o en lo bajo del terreno mientras alguien mira adentro.',
  ],
  'meter-turns': [
    'El medidor de agua gira con todo cerrado',
    'Cierre todas las llaves y máquinas, lea el medidor y vuelva a leerlo media hora después.',
  ],
  'test-hole-fills': [
    'Un hoyo de prueba se llena de agua',
    'Cave un hoyo de 1 pie (0.3 m) lejos del muro y de las instalaciones, y vea una hora después.',
  ],
  'water-bed-stays': [
    'Horas hasta que se va el agua bajo la membrana',
    'Apriete la membrana después de la lluvia y otra vez uno y dos días después.',
  ],
  'inside-below-outside': [
    'Tierra de adentro más baja que la de afuera',
    'Nivele de la tierra de adentro a la de afuera en el muro bajo.',
  ],
  'drain-below-floor': [
    'Drenaje debajo del piso que protege',
    'Nivele el fondo del tubo contra el piso en los dos extremos.',
  ],
  'drain-joined': ['Los tubos del drenaje están unidos', 'Abra una ventana en una unión o pase una cámara.'],
  'drain-fall': ['Pendiente del drenaje', 'Nivele el tubo cada 10 pies (3 m).'],
  'inlet-rim-proud': ['Borde del foso sobre la membrana', 'Mida de la membrana hasta el borde.'],
  'condensate-pump-fixed': [
    'La bomba de condensado está fija',
    'Jale la bomba y busque marcas de agua alrededor.',
  ],
  'condensate-fall': [
    'Pendiente de la línea de condensado',
    'Ponga un nivel sobre la línea y eche una pinta de agua.',
  ],
  'wall-damp-in-dry-weather': [
    'El muro sigue húmedo tras dos semanas secas',
    'Marque la orilla de la humedad en el muro; vuelva a ver después de dos semanas sin lluvia.',
  ],
  'wall-over-dew-point': [
    'Muro sobre el punto de rocío',
    'Lea el muro por contacto y el aire a su lado, y reste el punto de rocío.',
  ],
  'wood-over-air': [
    'Madera más mojada de lo que el aire la tendría',
    'Lea viguetas con el medidor de agujas, corrija por temperatura y especie, y compare con el aire a su lado.',
  ],
  'wet-batts': ['Aislante mojado o caído', 'Vea y apriete entre las viguetas.'],
  'wood-under-bath': [
    'Lo más mojado está bajo un baño, cocina o tubo',
    'Ponga en el plano las lecturas más mojadas y vea qué hay arriba en la casa.',
  ],
  'sweats-at-sixty': [
    'Sudaría aun con aire al 60%',
    'Lea la superficie más fría y compárela con el punto de rocío del mismo aire al 60%.',
  ],
  'duct-leaks': [
    'Un ducto tiene fugas',
    'Con el ventilador prendido, sienta y pase humo por todas las uniones.',
  ],
  'duct-insulation': ['Aislante de los ductos fríos', 'Lea el valor R del forro o mida su grueso.'],
  'heating-season': ['Visto con la calefacción en uso', 'Anote la fecha, o vuelva a ver cuando hiele.'],
  'joist-clearance': ['Viguetas sobre la tierra', 'Mida de la tierra a la vigueta más baja.'],
  'liner-touches-wood': [
    'La membrana toca madera sin tratar',
    'Mire a lo largo de soleras, postes y viguetas.',
  ],
  'pocket-gap': [
    'Espacio de aire alrededor de las puntas de viga',
    'Sienta el espacio arriba, a los lados y en la punta con un calibrador.',
  ],
  'sill-above-earth': [
    'Solera sobre el terreno de afuera',
    'Mida afuera del terreno a la cara de abajo de la solera.',
  ],
  debris: ['Restos de madera y basura', 'Vea todo el piso y levante la membrana en la esquina baja.'],
  'smell-under-sheet': [
    'Huele más al levantar la membrana',
    'Levante la membrana en la esquina baja y en una unión; dos personas juzgan por el olfato.',
  ],
  'old-liner-left': [
    'Hay una membrana vieja debajo',
    'Corte una ventana de 6 pulgadas (150 mm) en el borde y mire; póngale parche.',
  ],
  'old-liner-dry': ['Está seco entre las membranas', 'Meta la mano entre las membranas en la esquina baja.'],
  'winter-floor-share': [
    'Parte del aire de la casa que subió por el piso en invierno',
    'Mida las fugas de la casa con una puerta sopladora y corra el año hora por hora.',
  ],
  'hatch-gasketed': [
    'La escotilla a la casa tiene empaque',
    'Levante la escotilla y busque un empaque entero.',
  ],
  'smoke-goes-up': [
    'El humo sube por los pasos de tubo',
    'En un día frío acerque humo a los pasos de tubo y cable del piso.',
  ],
  'free-run': ['Espacio libre frente a la máquina', 'Mida de la salida a lo primero contra lo que sopla.'],
  'inlet-shortfall': [
    'Aire en la entrada más seco que el espacio',
    'Lea el aire en la entrada y en medio del espacio después de diez minutos de trabajo.',
  ],
  'starts-per-hour': ['Arranques por hora', 'Escuche una hora, o registre la corriente de su enchufe.'],
  'run-share': [
    'Parte del tiempo que trabaja la máquina',
    'Lea el contador de horas dos veces con una semana entre ellas, o pese su agua de un día.',
  ],
  'humidistat-error': [
    'El humidistato difiere de una referencia',
    'Tenga un higrómetro revisado en su entrada diez minutos.',
  ],
  partitions: [
    'Paredes o ductos bajos entre los extremos',
    'Dibuje en el plano las paredes de adentro y la altura bajo los ductos.',
  ],
  'fan-evens-out': [
    'Un ventilador de caja lo empareja en dos días',
    'Ponga un ventilador que sople del extremo seco al húmedo y lea los dos extremos después de dos días.',
  ],
  'open-ground-at-damp-end': [
    'Tierra descubierta en el extremo húmedo',
    'Vaya a la lectura más húmeda y vea la tierra a menos de 10 pies (3 m).',
  ],
};
