import { units } from '@undercroft/engine';
import { Button } from '../../parts/button.tsx';
import { PlanView } from '../../plan/plan-view.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { LOCALES, useTexts } from '../../text/texts.ts';
import { StationsOnPlan, ViewOnPlan } from './picture-layer.tsx';
import { picturesTexts } from './pictures-texts.ts';
import { namedThings, thingName } from './thing-names.ts';
import { usePictureViews } from './use-picture-views.ts';

interface DetailPlanProps {
  readonly props: QuestionProps;
  /** Id of the picture. */
  readonly id: string;
  readonly onShow: (id: string) => void;
}

/** Where a picture was taken and what of the space it shows, with the way to the one before and after it. */
export function DetailPlan({ props, id, onShow }: DetailPlanProps) {
  const say = useTexts(picturesTexts);
  const { language, units: system } = useSettings();
  const views = usePictureViews(props);
  const { view, result } = props;
  const coverage = result.assessment?.coverage;
  const pictures = coverage?.pictures ?? [];
  const index = pictures.findIndex((picture) => picture.id === id);
  const own = pictures[index];
  if (coverage === undefined || own === undefined) return null;
  const seen = views.find((one) => one.id === id);
  const area = (squareMeters: number) => units.formatQuantity(squareMeters, 'area', system, 0);
  const names = namedThings(coverage)
    .filter((thing) => own.shows.some((shown) => shown.kind === thing.kind && shown.id === thing.id))
    .map(({ name }) => thingName(name, language));
  const before = pictures[index - 1];
  const after = pictures[index + 1];
  return (
    <div className="detail-plan">
      <PlanView view={view} result={result} label={say('detailPlan')} layers="built" focus={own.at}>
        {seen !== undefined && <ViewOnPlan view={seen} />}
        <StationsOnPlan pictures={pictures} meant={new Set([id])} />
      </PlanView>
      <p>
        <strong>{say('tileNumber', { number: own.number })}.</strong>{' '}
        {say('detailShows', { area: area(own.floorM2), fresh: area(own.newM2) })}{' '}
        {names.length > 0 &&
          say('detailThings', { things: new Intl.ListFormat(LOCALES[language]).format(names) })}
      </p>
      <ul>
        {(view.job?.findings ?? []).map(
          ({ id: findingId, photoIds, clipIds = [], title }, at) =>
            [...photoIds, ...clipIds].includes(id) && (
              <li key={findingId}>{say('detailFinding', { number: at + 1, title })}</li>
            ),
        )}
      </ul>
      <div className="actions">
        <Button isDisabled={before === undefined} onPress={() => before !== undefined && onShow(before.id)}>
          {say('before')}
        </Button>
        <Button isDisabled={after === undefined} onPress={() => after !== undefined && onShow(after.id)}>
          {say('after')}
        </Button>
      </div>
    </div>
  );
}
