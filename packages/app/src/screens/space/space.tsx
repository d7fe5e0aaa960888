import { units } from '@undercroft/engine';
import { Figure, Figures } from '../../parts/figures.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { cautionWords } from '../../text/caution-words.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { MeasureTool } from '../measure/measure-tool.tsx';
import { StillMissing } from '../missing/still-missing.tsx';
import { PictureTool } from '../pictures/picture-tool.tsx';
import { DrawTool } from './draw/draw-tool.tsx';
import { ThingList } from './draw/list-panel.tsx';
import { useEditor } from './draw/use-editor.ts';
import { JobDetails } from './job-details.tsx';
import { spaceTexts } from './space-texts.ts';
import './space.css';

/** What is there: the sizes of the space, and whose it is. */
export function Answer(props: QuestionProps) {
  const say = useTexts(spaceTexts);
  const common = useTexts(commonTexts);
  const { view, result } = props;
  const { assessment } = result;
  return (
    <div className="answer">
      {result.reason !== undefined && <Notice kind="wrong">{result.reason}</Notice>}
      {view.job !== null && result.busy && assessment === null && (
        <p className="soft">{common('computing')}</p>
      )}
      {assessment !== null && (
        <>
          {assessment.cautions.length > 0 && (
            <Notice kind="caution" title={say('cautions')}>
              {assessment.cautions.map((caution) => (
                <Caution key={caution.id} caution={caution} />
              ))}
            </Notice>
          )}
          <Sizes {...props} />
        </>
      )}
      <StillMissing {...props} />
      <Drawn {...props} />
      <h3>{say('details')}</h3>
      <JobDetails {...props} />
    </div>
  );
}

export { PlanEditor as Center } from './draw/plan-editor.tsx';

/** What is done under the house. */
export function Tools(props: QuestionProps) {
  return (
    <>
      <DrawTool {...props} />
      <MeasureTool {...props} />
      <PictureTool {...props} />
    </>
  );
}

/** Everything drawn, in words and numbers. */
function Drawn({ openJob, view }: QuestionProps) {
  const say = useTexts(spaceTexts);
  const [editor] = useEditor(openJob);
  if (view.job === null || view.job.plan.outline === undefined) return null;
  return (
    <details>
      <summary>{say('drawn')}</summary>
      <ThingList editor={editor} />
    </details>
  );
}

/** One caution: its subject at sight, the rest a tap away, so that the sizes stay in reach. */
type CautionShown = NonNullable<QuestionProps['result']['assessment']>['cautions'][number];

function Caution({ caution }: { readonly caution: CautionShown }) {
  const { language } = useSettings();
  // Its title is the first sentence.
  const end = caution.text.indexOf('. ');
  const { title, text } = cautionWords(
    { id: caution.id, title: caution.text.slice(0, end), text: caution.text.slice(end + 2) },
    language,
  );
  return (
    <details>
      <summary>{title}</summary>
      <p>{text}</p>
      {language === 'en' && <p className="soft">{caution.because}</p>}
    </details>
  );
}

function Sizes({ result }: QuestionProps) {
  const say = useTexts(spaceTexts);
  const { units: system } = useSettings();
  const geometry = result.assessment?.geometry;
  if (geometry === undefined) return null;
  const { clearHeightM: headroom, closure } = geometry;
  return (
    <>
      <Figures
        rows={[
          [say('area'), <Figure key="a" value={geometry.floorAreaM2} dimension="area" digits={0} />],
          [say('perimeter'), <Figure key="p" value={geometry.perimeterM} dimension="length" />],
          [
            say('headroom'),
            <Figure key="h" value={headroom.minimum} dimension="length" assumed={headroom.assumed} />,
          ],
          [
            say('headroomMean'),
            <Figure key="m" value={headroom.mean} dimension="length" assumed={headroom.assumed} />,
          ],
          [
            say('volume'),
            <Figure
              key="v"
              value={geometry.volumeM3}
              dimension="volume"
              digits={0}
              assumed={headroom.assumed}
            />,
          ],
          [say('bareEarth'), <Figure key="b" value={geometry.bareEarthM2} dimension="area" digits={0} />],
          [say('piers'), geometry.pierCount],
          [say('vents'), <Figure key="o" value={geometry.openVentAreaM2} dimension="area" digits={2} />],
        ]}
      />
      {closure !== undefined && (
        <p>{say('closure', { gap: units.formatQuantity(closure.misclosureM, 'length', system) })}</p>
      )}
      <details>
        <summary>{say('walls')}</summary>
        <Figures
          rows={geometry.edges.map((edge, index) => [
            say('wall', { number: index + 1 }),
            <Figure key={edge.id} value={edge.lengthM} dimension="length" />,
          ])}
        />
      </details>
    </>
  );
}
