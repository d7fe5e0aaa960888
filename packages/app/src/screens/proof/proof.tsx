import type { CoverageAssessment } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { isSurveyed } from '@undercroft/record';
import { Figure, Figures } from '../../parts/figures.tsx';
import { Notice } from '../../parts/notice.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { PlanView } from '../../plan/plan-view.tsx';
import { useSettings } from '../../settings/settings.ts';
import { PlanCenter } from '../../shell/plan-center.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { CoverageLayer, RouteLayer } from './coverage-layer.tsx';
import { CrawlGuide } from './crawl-guide.tsx';
import { useCrawl } from './crawl-state.ts';
import { EarlierSurvey } from './earlier.tsx';
import { FrozenStates } from './frozen.tsx';
import { proofTexts } from './proof-texts.ts';
import { useRoughLength } from './rough-length.ts';
import { TwoPictures } from './two-pictures.tsx';
import './proof.css';

const VERDICTS = {
  proved: 'met',
  partly: 'not-shown',
  'no-picture': 'not-shown',
  unplaced: 'not-shown',
} as const;

/** The plan with what nobody has looked at in the dark, the pictures that were taken, and the way of a planned crawl. */
export function Center(props: QuestionProps) {
  const say = useTexts(proofTexts);
  const { view, result } = props;
  const crawl = useCrawl(view.id);
  const coverage = result.assessment?.coverage;
  if (coverage === undefined) return <PlanCenter {...props} />;
  const stop = crawl.plan?.stops[crawl.at];
  return (
    <div className="proof-center">
      <PlanView view={view} result={result} label={say('planLabel')} layers="built" focus={stop?.at}>
        <CoverageLayer coverage={coverage} />
        {crawl.plan !== undefined && <RouteLayer plan={crawl.plan} current={crawl.at} />}
      </PlanView>
      <p className="soft">{say('layer')}</p>
    </div>
  );
}

export { PictureTool as Tools } from '../pictures/picture-tool.tsx';

/** Is it done, and who has seen it: what the pictures show, what they do not, and what is claimed without them. */
export function Answer({ openJob, view, result }: QuestionProps) {
  const say = useTexts(proofTexts);
  const common = useTexts(commonTexts);
  const { job } = view;
  const { assessment } = result;
  if (job === null || !isSurveyed(job)) return <p>{say('noJob')}</p>;
  const coverage = assessment?.coverage;
  if (assessment === null || coverage === undefined) {
    return result.reason === undefined ? (
      <p className="soft">{common('computing')}</p>
    ) : (
      <Notice kind="wrong">{result.reason}</Notice>
    );
  }
  return (
    <div className="answer proof">
      <Sums coverage={coverage} />
      <Unseen coverage={coverage} />
      <CrawlGuide job={job} geometry={assessment.geometry} />
      <Claims coverage={coverage} />
      <Piers coverage={coverage} />
      <TwoPictures photos={job.media.photos} />
      <EarlierSurvey view={view} />
      <FrozenStates openJob={openJob} view={view} />
    </div>
  );
}

interface Part {
  readonly coverage: CoverageAssessment;
}

function Sums({ coverage }: Part) {
  const say = useTexts(proofTexts);
  const { units: system } = useSettings();
  const { floor, pictures, unplaced } = coverage;
  return (
    <>
      <Figures
        rows={[
          [say('seen'), units.formatQuantity(floor.share, 'share', system)],
          [
            say('unseenFloor'),
            <Figure key="u" value={floor.areaM2 - floor.seenM2} dimension="area" digits={0} />,
          ],
          [say('pictures'), pictures.length],
        ]}
      />
      {pictures.length === 0 && <p>{say('noPictures')}</p>}
      {unplaced.length > 0 && <p className="soft">{say('unplaced', { count: unplaced.length })}</p>}
    </>
  );
}

function Unseen({ coverage }: Part) {
  const say = useTexts(proofTexts);
  const { units: system } = useSettings();
  const length = useRoughLength();
  return (
    <section>
      <h3>{say('unseen')}</h3>
      {coverage.unseen.length === 0 ? (
        <p>{say('nothingUnseen')}</p>
      ) : (
        <ul className="proof-rows">
          {coverage.unseen.map((part) => (
            <li key={`${part.at.xM} ${part.at.yM}`}>
              <strong>
                {say('part', {
                  area: units.formatQuantity(part.areaM2, 'area', system, 0),
                  x: length(part.at.xM),
                  y: length(part.at.yM),
                })}
              </strong>
              {part.standsIn.length > 0 && (
                <span>{say('holds', { things: part.standsIn.map((thing) => thing.name).join(', ') })}</span>
              )}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Claims({ coverage }: Part) {
  const say = useTexts(proofTexts);
  return (
    <section>
      <h3>{say('claims')}</h3>
      {coverage.proofs.length === 0 ? (
        <p>{say('noClaims')}</p>
      ) : (
        <ul className="proof-rows">
          {coverage.proofs.map((proof) => (
            <li key={`${proof.of} ${proof.id}`}>
              <span className="proof-verdict">
                <VerdictMark verdict={VERDICTS[proof.verdict]} wordless />
                {say(proof.verdict === 'unplaced' ? 'unplaced-claim' : proof.verdict)}
              </span>
              <strong>{proof.title}</strong>
              <span className="soft">
                {say(proof.of)}. {proof.says}
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Piers({ coverage }: Part) {
  const say = useTexts(proofTexts);
  const hidden = coverage.piers.filter((pier) => pier.facesShown < pier.facesOpen);
  if (hidden.length === 0 || coverage.pictures.length === 0) return null;
  return (
    <details>
      <summary>
        {say('piers')} ({hidden.length})
      </summary>
      <ul className="proof-rows">
        {hidden.map(({ id, facesShown, facesOpen }) => (
          <li key={id}>{say('pierFaces', { id, shown: facesShown, open: facesOpen })}</li>
        ))}
      </ul>
    </details>
  );
}
