import type { JobInput } from '../schema/job.ts';
import { feet } from './lay-out.ts';

type PhotoInput = NonNullable<NonNullable<JobInput['media']>['photos']>[number];

/** Where a picture was taken, in feet, where it looks and what it takes in. */
type Row = readonly [x: number, y: number, bearingDeg: number, fieldOfViewDeg: number, caption?: string];

const ROWS: readonly Row[] = [
  [5, 14.5, 50, 100, 'From the left bay toward the back'],
  [5, 14.5, 145, 100, 'Front row of piers from the left bay'],
  [5, 14.5, 240, 100, 'Left wall and basin'],
  [5, 14.5, 320, 100, 'Machine in the back left corner'],
  [1.5, 21, 50, 100],
  [1.5, 21, 145, 100],
  [18, 15.5, 50, 100, 'Rear row, third and fourth pier'],
  [18, 15.5, 135, 100, 'Strip under the trunk duct'],
  [18, 15.5, 330, 100],
  [18, 15.5, 260, 100],
  [27.5, 24.5, 50, 100],
  [27.5, 24.5, 145, 100, 'Rear row without wraps, from the back'],
  [27.5, 24.5, 240, 100, 'Rear row with wraps, from the back'],
  [27.5, 24.5, 320, 100, 'Back wall, liner edge down'],
  [34.5, 15.5, 0, 100],
  [34.5, 15.5, 135, 100],
  [34.5, 15.5, 260, 100],
  [34.5, 15.5, 330, 100],
  [47.5, 14.5, 95, 100, 'Right wall, middle'],
  [47.5, 14.5, 145, 100],
  [47.5, 14.5, 240, 100, 'Front row, last piers without wraps'],
  [50, 14.5, 295, 65, 'Last pier of the rear row, right face'],
  [41, 15, 68, 65, 'Last pier of the rear row, left face'],
  [37.5, 5, 50, 100],
  [37.5, 5, 145, 100, 'Front wall, right half'],
  [37.5, 5, 240, 100, 'Seam of the front bay'],
  [37.5, 5, 325, 100],
  [27.5, 11.5, 150, 100, 'Drain along the front wall'],
  [27.5, 11.5, 245, 100],
  [17, 3, 50, 100],
  [17, 3, 250, 100, 'Front left corner'],
  [17, 3, 330, 100],
];

/** The bytes that are drawn for each row (`drawPictures`): their SHA-256 and how many they are. */
const DRAWN: readonly (readonly [sha256: string, bytes: number])[] = [
  ['0446c11dde66dec37ff119b225f9df3311f3ee1bb685409ec181e87c05b4a14c', 3300],
  ['061d08a9f0c1be06f233e536dc302dbefe21a5009e255d7125079fbc7e43ff1a', 3578],
  ['f16e2220da62ccdd177cb730832b40b231f69b0db6d79a0b788bf8d59d135314', 2415],
  ['8d33aec3878cf2d27faf747de59978ccef953837a59955b21cd357df4ade8878', 3058],
  ['628c45ef5e234e0703f41868fa2be40f297e6317f2c8fe0c8653eca2fd929326', 3050],
  ['9d10febf41fcf15786838ef616c9b97513f723347699585616be9c98a116a24b', 3712],
  ['b14ebd70c6241725187a145186ce2174bd72b07a9dffc27f8259a1fd73816d97', 3253],
  ['4c920a908d271b3b58f3695108985d4ac435d5864d14f0634f1463c76f74aa58', 3232],
  ['cfe4432fe8374f2889f8076790cdf4b0e02151cc459cc9a2e98e83b17f9736ad', 3437],
  ['f240c9c27fc612cb1005602769a2b81726a422600fabe70622e7c39e05a6720f', 2989],
  ['e8e92807c062351dfdb6bbbf7d40309daca1e374c1c5a3a47fec8a29bf390485', 2819],
  ['404a9d20374ee7bb45651cd1a5bf59c1d214f16e361da0358cabc73640c23b10', 3559],
  ['acc3da8027a582c5c17b2183a3faae44a3db683a28372391a9a508d72ee5115a', 2991],
  ['8e590e78e9676ad19b6161e173725623aafe92f74b72f8b862b470cb8e1f7aa2', 2905],
  ['662cb533a75e69c6f94ab860f323b3ced0bb19e580cc9f116f750539183b781f', 2454],
  ['bcbe9e3d114d984ea0ca22498ef6b7ae7a3b542b3f3e5dc43a7b8d10db0a591a', 3191],
  ['95b01d089d790e194f4fcb7b521762d1944c6a16b47a5240cb3692e2980c04e4', 3050],
  ['d9b573da33fa8689427d9f7dda867b481adbcdbc398dd863ce05a6b6add86d48', 3270],
  ['af35859ab1e03733aad5620762e7e8a76f7eca8010bef36743a9f0da62cd02e4', 1994],
  ['793a9a9fa82abb969112f6c80761f45dfd53957bb8210136ce417003aaf95a9e', 3160],
  ['0d2110f132d9cc6b2ee8d6866a126616290c2eeeb8c64cc9dceb02bafd7d688c', 3152],
  ['a40dcf95f25b8d3b04f92f50f4bc59918b214c705cd7ad7b3b948ad7aa916315', 3175],
  ['664e6ffe8fe0001974ff22118ec64d25d839b3d441230a0dce1d1f9534d2a877', 2215],
  ['cbf00ac99a1dee03a331567771f734921ae99b43c410659e2a2f74126ceab670', 3005],
  ['be937f30cc7c2d2a22dfe2c4adbbf04f5224641ffe3fcae5bcc2ad6ed49cade2', 3027],
  ['5a13e6a8bb54120863b2369b0c4980e829a8057164a88787f3987e7d7671aef4', 2893],
  ['65e5027d45643a63ac2ba70c2d199b9f4653a9301c5b1ead37bf185061a7b198', 3713],
  ['f5e243b301645bc6491084bc414bd98dfc12cbacba90c410f90c9b0dc1215755', 3357],
  ['bd7ee5b890e50db9baae1b8e6b50d255a09fac49a673024acdfb98120cceed86', 3079],
  ['3b5fbca4e07727b25b53a048259cade8baae7dc8b558ef6982365d0daa394dc6', 3440],
  ['df6cf43141adf39e18d3c841734cfac1c5c282879d69d4d4de3fa2c7ea48545f', 2864],
  ['5ee9e7da618645c375a98c3b69290a7376919d40bec2e3a24692fa2ca30d5ff6', 3760],
];

const FIRST_MINUTE = 52;

/** Time of a picture: the round began at 08:52, one picture a minute. */
function taken(index: number): string {
  const minute = FIRST_MINUTE + index;
  const clock = `${String(8 + Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
  return `2026-08-12T${clock}:00-04:00`;
}

/** The surveyor's pictures, in the order in which they were taken. The far right corner is in none of them. */
export const doubtedLinerPhotos: readonly PhotoInput[] = ROWS.map(
  ([x, y, bearingDeg, fieldOfViewDeg, caption], i) => ({
    id: `ph${i + 1}`,
    sha256: DRAWN[i][0],
    bytes: DRAWN[i][1],
    mediaType: 'image/png',
    takenAt: taken(i),
    deviceTime: taken(i),
    who: 'Ruth Castellane',
    place: { at: feet(x, y), heightM: 0.3 },
    bearingDeg,
    fieldOfViewDeg,
    rangeM: 5,
    ...(caption === undefined ? {} : { caption }),
  }),
);
