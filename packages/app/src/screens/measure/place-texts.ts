import { texts } from '../../text/texts.ts';

export const placeTexts = texts(
  {
    at: '{x} across, {y} up',
    wall: 'Wall {number}',
    'interior-wall': 'Inside wall {number}',
    pier: 'Pier {number}',
    girder: 'Girder {number}',
    duct: 'Duct {number}',
    vent: 'Vent {number}',
    door: 'Access {number}',
    equipment: 'Equipment {number}',
    obstacle: 'Obstacle {number}',
    zone: 'Zone {number}',
    drain: 'Drain {number}',
  },
  {
    at: '{x} a lo ancho, {y} hacia arriba',
    wall: 'Muro {number}',
    'interior-wall': 'Muro interior {number}',
    pier: 'Pilar {number}',
    girder: 'Viga maestra {number}',
    duct: 'Ducto {number}',
    vent: 'Rejilla {number}',
    door: 'Acceso {number}',
    equipment: 'Equipo {number}',
    obstacle: 'Obstáculo {number}',
    zone: 'Zona {number}',
    drain: 'Drenaje {number}',
  },
);
