import { texts } from '../../text/texts.ts';

export const faultsTexts = texts(
  {
    noJob: 'Nothing can be judged before the plan is drawn.',
    headNotMet: {
      one: '{count} criterion is not met (code: {code}), {met} are met, {notShown} are not shown yet.',
      other: '{count} criteria are not met (code: {code}), {met} are met, {notShown} are not shown yet.',
    },
    headAllMet: 'Nothing that was measured breaks a criterion: {met} met, {notShown} not shown yet.',
    headCalm: 'No reading is in alarm.',
    headAlarms: {
      one: '{alarms} of {count} reading in alarm.',
      other: '{alarms} of {count} readings in alarm.',
    },
    headPath: 'Most of its water ({share}, about {flow}) comes by this path: {path}.',
    criteria: 'Criteria',
    readings: 'Readings',
    noReadings: 'No readings were taken.',
    fine: 'fine',
    watch: 'watch',
    alarm: 'alarm',
    limit: 'Limit: {limit} ({si})',
    source: 'Source',
    evidence: 'Rests on',
    noEvidence: 'Nobody has measured or photographed it.',
    takenBy: '{who}, {when}',
    consequence: 'If it stays so',
    licensed: 'Licensed trade: {trade}',
    moreOf: { one: '{count} more of the kind "{verdict}"', other: '{count} more of the kind "{verdict}"' },
  },
  {
    noJob: 'No se puede juzgar nada antes de dibujar el plano.',
    headNotMet: {
      one: '{count} criterio no se cumple (de código: {code}), {met} se cumplen, {notShown} todavía no se muestran.',
      other:
        '{count} criterios no se cumplen (de código: {code}), {met} se cumplen, {notShown} todavía no se muestran.',
    },
    headAllMet:
      'Nada de lo medido incumple un criterio: {met} se cumplen, {notShown} todavía no se muestran.',
    headCalm: 'Ninguna lectura está en alarma.',
    headAlarms: {
      one: '{alarms} de {count} lectura en alarma.',
      other: '{alarms} de {count} lecturas en alarma.',
    },
    headPath: 'La mayor parte del agua ({share}, unos {flow}) llega por esta vía: {path}.',
    criteria: 'Criterios',
    readings: 'Lecturas',
    noReadings: 'No se tomaron lecturas.',
    fine: 'bien',
    watch: 'vigilar',
    alarm: 'alarma',
    limit: 'Límite: {limit} ({si})',
    source: 'Fuente',
    evidence: 'Se apoya en',
    noEvidence: 'Nadie lo ha medido ni fotografiado.',
    takenBy: '{who}, {when}',
    consequence: 'Si se queda así',
    licensed: 'Oficio con licencia: {trade}',
    moreOf: { one: '{count} más del tipo «{verdict}»', other: '{count} más del tipo «{verdict}»' },
  },
);
