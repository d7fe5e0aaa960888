import type { distribution, Notice } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { Origin } from '../origin.ts';

/** A figure over the band of mixing: the middle, and the least and greatest of low, middle and high mixing. */
export interface FieldRange {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/** Where a machine takes and gives its air. */
export interface MachinePlaced {
  /** Id of the piece of equipment in the record. */
  readonly id: string;
  readonly intake: Point;
  /** Where its air comes out; far from the intake when a duct carries it there. */
  readonly outlet: Point;
  /** Direction of its jet [degrees clockwise from the plan's y axis]; null where a duct or hood spreads the air. */
  readonly bearingDeg: number | null;
  readonly ducted: boolean;
  /** Where the humidistat reads the air, when not at the intake. */
  readonly sensor?: Point;
  readonly setRelativeHumidity: number;
  /** At 80 °F and 60 % relative humidity. */
  readonly ratedKgPerDay: number;
  readonly litersPerKWh: number;
  readonly airflowM3PerS: number;
  /** How far its jet reaches [m], and what ends it; absent where there is no jet. */
  readonly throwM?: number;
  readonly throwEndedBy?: distribution.Throw['endedBy'];
}

/** A fan that stirs the air. */
export interface FanPlaced {
  /** Id in the record; absent for one that is only proposed. */
  readonly id?: string;
  readonly at: Point;
  readonly bearingDeg: number;
  readonly airflowM3PerS: number;
  readonly powerW: number;
}

/** A part of the floor with its mean humidity and its dampest place. */
export interface FloorPartShown {
  readonly areaM2: number;
  readonly relativeHumidity: number;
  readonly at: Point;
}

/**
 * Maps on one even grid over the plan, row by row from the least y, each row from the least x: value k belongs to column
 * k mod `columns` and row ⌊k / columns⌋, whose middle is (originXM + (column + ½) cellXM, originYM + (row + ½) cellYM).
 * Null where there is no floor.
 */
export interface FieldGridMap {
  readonly originXM: number;
  readonly originYM: number;
  readonly cellXM: number;
  readonly cellYM: number;
  readonly columns: number;
  readonly rows: number;
  /** Fraction at the temperature of the place, rounded to hundredths of a percent; above 1 where the air would hold more than it can. */
  readonly relativeHumidity: readonly (number | null)[];
  /** Rounded to hundredths. */
  readonly dewPointC: readonly (number | null)[];
  /** Moisture content that wood comes to in that air, fraction of dry mass, rounded like the humidity. */
  readonly woodMoisture: readonly (number | null)[];
}

/** The steady air of one arrangement at one strength of mixing. Shares are of the floor area, humidities fractions. */
export interface DistributionState {
  /** Background mixing [m²/s]. */
  readonly mixingM2PerS: number;
  /** How the machine fares. */
  readonly outcome: distribution.MachineOutcome;
  /** Share of the time that the machine runs, and the share if the air were mixed. */
  readonly duty: number;
  readonly mixedDuty: number;
  /** Little running and a wet corner: the mark of dry air that does not get about. */
  readonly signature: boolean;
  readonly removedKgPerDay: number;
  /** Of the machine; fans run beside it. */
  readonly energyKWhPerDay: number;
  readonly intakeRelativeHumidity: number;
  readonly sensorRelativeHumidity: number;
  /** The twentieth of the floor that is farthest from the intake as found, the same place for every arrangement. */
  readonly farEnd: FloorPartShown;
  /** The dampest twentieth of the floor. */
  readonly dampest: FloorPartShown;
  /** The bay with the highest mean, and how many bays there are. */
  readonly worstBay: FloorPartShown;
  readonly bayCount: number;
  readonly highest: { readonly relativeHumidity: number; readonly at: Point };
  readonly lowest: { readonly relativeHumidity: number; readonly at: Point };
  readonly meanRelativeHumidity: number;
  readonly meanTemperatureC: number;
  readonly meanWoodMoisture: number;
  readonly shareAbove60: number;
  readonly shareAbove70: number;
  readonly shareAbove80: number;
  /** Floor where the air would hold more than it can. */
  readonly shareSaturated: number;
  /** Length over which the drying of one place fades, and the way from the intake to the farthest place [m]. */
  readonly reachM: number;
  readonly farM: number;
  /**
   * How well the air of the whole plan reaches the humidistat: 1 when all of it does, below 1 when the machine dries its
   * own pocket. What the year takes as its plan coefficient. Absent where the machine removes nothing.
   */
  readonly planCoefficient?: number;
  /** Water into the air by what gives it; negative takes [kg/day]. */
  readonly water: readonly { readonly what: string; readonly kgPerDay: number }[];
  readonly map: FieldGridMap;
}

/** An arrangement at low, middle and high mixing. No figure of it is to be shown without its range. */
export interface DistributionBand {
  readonly machine: MachinePlaced;
  readonly fans: readonly FanPlaced[];
  readonly low: DistributionState;
  readonly value: DistributionState;
  readonly high: DistributionState;
  /** The figures that matter, over the band. */
  readonly ranges: {
    readonly duty: FieldRange;
    readonly mixedDuty: FieldRange;
    readonly intakeRelativeHumidity: FieldRange;
    readonly farEndRelativeHumidity: FieldRange;
    readonly dampestRelativeHumidity: FieldRange;
    readonly meanRelativeHumidity: FieldRange;
    readonly shareAbove60: FieldRange;
    readonly shareAbove70: FieldRange;
    readonly shareAbove80: FieldRange;
    readonly reachM: FieldRange;
    /** Absent where the machine removes nothing at one of the three. */
    readonly planCoefficient?: FieldRange;
  };
}

/** An arrangement that was tried, with what it is ranked by: figures at the middle of the band. */
export interface ArrangementTried {
  /** What it is, in a few words. */
  readonly what: string;
  readonly machine: MachinePlaced;
  readonly fans: readonly FanPlaced[];
  readonly dampestRelativeHumidity: number;
  readonly meanRelativeHumidity: number;
  readonly duty: number;
  /** Whether the humidistat is satisfied. */
  readonly holds: boolean;
  /** Of machine and fans. */
  readonly energyKWhPerDay: number;
  /** Way from the door to the machine [m]; absent where its place was not judged. */
  readonly wayM?: number;
  /** Whether its water needs a pump. */
  readonly pumped: boolean;
  /** Work and material over leaving things as they are. */
  readonly costCents: number;
}

/** The best single change of one kind, alone. */
export interface ArrangementChange extends ArrangementTried {
  /** `move`, `turn`, `duct`, `fan`, `remote humidistat`, `set-point 50 %`, ... */
  readonly kind: string;
}

/** Places or directions that one rule left out. */
export interface RuleExcluded {
  readonly rule: distribution.PlacingRule;
  readonly count: number;
}

/** Better arrangements for the space. */
export interface ArrangementsShown {
  /** How many were worked out. */
  readonly screened: number;
  /** The arrangement as found with its rank among them, from 1. */
  readonly present: ArrangementTried & { readonly rank: number };
  /** Best first. */
  readonly ranked: readonly ArrangementTried[];
  /** What one change alone buys. */
  readonly changes: readonly ArrangementChange[];
  /** The best one with its band; absent where the arrangement as found is the best, or dry enough. */
  readonly suggested?: DistributionBand & { readonly what: string; readonly costCents: number };
  /** Every place, or place and direction, that a rule forbids. */
  readonly excluded: readonly {
    readonly at: Point;
    /** Null where the rule concerns the place whatever the direction. */
    readonly bearingDeg: number | null;
    readonly rule: distribution.PlacingRule;
    readonly why: string;
  }[];
  readonly excludedByRule: readonly RuleExcluded[];
  readonly notices: readonly Notice[];
}

/** What the humidity readings say about mixing and sources. */
export type ReadingsFit =
  | {
      readonly outcome: 'not-fitted';
      /** One plain sentence. */
      readonly why: string;
      /** Places that were read, and places that are needed. */
      readonly places: number;
      readonly needed: number;
    }
  | {
      readonly outcome: 'fitted';
      readonly mixingM2PerS: distribution.FittedFigure;
      /** Strength of ground and wall sources over what was entered. */
      readonly sourceStrength: distribution.FittedFigure;
      /** −1..1: near ±1 the readings bind only a combination of the two. */
      readonly correlation: number;
      readonly residuals: readonly {
        readonly readingId: string;
        readonly at: Point;
        readonly read: number;
        readonly modeled: number;
      }[];
      /** Root of the mean square of the residuals, fraction. */
      readonly misfitBefore: number;
      readonly misfit: number;
      /** Whether the mixing of the maps is the fitted one. The sources of the maps stay as entered. */
      readonly used: boolean;
      readonly notices: readonly Notice[];
    };

/** A figure that the field rests on, with where it came from. */
export interface DistributionInput {
  readonly key: string;
  readonly title: string;
  readonly value: number | string;
  readonly unit: string;
  readonly low?: number;
  readonly high?: number;
  readonly origin: Origin;
}

/** The air over the plan, worked out. */
export interface DistributionWorkedOut {
  readonly outcome: 'worked-out';
  /** The state of outdoors, house and ground that it stands for. */
  readonly day: {
    /** e.g. "most humid day, July 23". */
    readonly title: string;
    readonly outdoorC: number;
    readonly outdoorHumidityRatio: number;
    readonly crawlC: number;
    readonly groundC: number;
    readonly houseC: number;
    readonly airChangesPerHour: number;
  };
  readonly mixing: FieldRange & { readonly origin: Origin };
  readonly found: DistributionBand;
  /** Only where a search was asked for. */
  readonly search?: ArrangementsShown;
  readonly fit: ReadingsFit;
  readonly inputs: readonly DistributionInput[];
  /** Limits of what the maps can say: they belong beside every map. */
  readonly limits: readonly Notice[];
  readonly notices: readonly Notice[];
}

/** Where a dehumidifier that the job is to set would stand best. */
export interface MachinePlacing {
  /** Its name in the list of machines. */
  readonly machine: string;
  readonly day: DistributionWorkedOut['day'];
  readonly mixing: DistributionWorkedOut['mixing'];
  /** How many arrangements were worked out. */
  readonly screened: number;
  /** Best first. */
  readonly ranked: readonly ArrangementTried[];
  /** The best with its band; its far end is that from its own intake. Absent where no place meets the rules. */
  readonly suggested?: DistributionBand & { readonly what: string; readonly costCents: number };
  readonly excluded: ArrangementsShown['excluded'];
  readonly excludedByRule: ArrangementsShown['excludedByRule'];
  readonly inputs: readonly DistributionInput[];
  readonly limits: readonly Notice[];
  readonly notices: readonly Notice[];
}

/** Why there is no field. */
export interface DistributionMissing {
  readonly outcome: 'missing';
  readonly code: 'no-machine' | 'refused';
  /** One plain sentence. */
  readonly why: string;
  /**
   * Only where a search was asked for, and the repairs of the job set a dehumidifier: its places in the space with all
   * repairs done.
   */
  readonly placing?: MachinePlacing;
}

/** Where the dry air goes and where it does not; a reason where that could not be worked out. */
export type DistributionAssessment = DistributionWorkedOut | DistributionMissing;
