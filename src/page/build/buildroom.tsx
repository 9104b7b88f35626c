import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { BuildTask } from '../../shop/build/index.ts';
import { refusedText, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { HandsFree, handsFree } from '../handsfree/index.ts';
import { AtJob, JobBar, jobsOf } from '../job/index.ts';
import { room } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import { aloudOf } from './aloud.ts';
import { Building } from './building.ts';
import { StepList } from './steplist.tsx';
import { Task } from './task.tsx';
import { words } from './words.ts';
import './build.css';

/** A unit built by its plan, one thing a screen; and after it, its first start. */
export function BuildRoom({ study }: { readonly study: Study }) {
  const work = jobsOf(study).work.value;
  if (!study.file.train.value) return <p>{words().noTrain}</p>;
  return (
    <AtJob study={study}>{work !== undefined && <Unit key={work} {...{ study, work }} />}</AtJob>
  );
}

function Unit({ study, work }: { readonly study: Study; readonly work: string }) {
  const say = words();
  const file = study.file.name.value;
  const building = useMemo(() => new Building(study, work), [study, work]);
  const place = useRef<HTMLDivElement>(null);
  const begun = useRef(false);
  const task = building.task.value;
  // Who goes on is told where they are; and no key that is still down presses what comes.
  useEffect(() => {
    if (begun.current) {
      const title = place.current?.querySelector('h2');
      title?.focus({ preventScroll: true });
      title?.closest('section')?.scrollIntoView({ block: 'start' });
    }
    begun.current = true;
  }, [task?.key]);
  const planned = building.planned.value;
  if (!planned) return null;
  if ('refused' in planned) {
    return (
      <div class="build">
        <p>{refusedText(planned.refused, visible(file), voiceNow())}</p>
        <div class="row">
          <LargeButton main onPress={() => (room.value = 'strip')}>
            {say.tellStrip}
          </LargeButton>
        </div>
      </div>
    );
  }
  return (
    <div class={`build${handsFree.value ? ' build-free' : ''}`} ref={place}>
      <Keeping study={study} building={building} />
      <HandsFree lines={task ? linesOf(building, task) : [say.built]} at={task?.key ?? ''} />
      {task ? (
        <Task key={task.key} building={building} task={task} />
      ) : (
        <Done building={building} />
      )}
      <StepList building={building} />
    </div>
  );
}

function linesOf(building: Building, task: BuildTask): readonly string[] {
  const [train, { plan }] = [building.train.value, building];
  if (!train || !plan) return [];
  return aloudOf(task, { train, plan, voice: voiceNow(), stand: stand.value });
}

/** Where it is written down: the open job; else this browser, until there is one. */
function Keeping({ study, building }: { readonly study: Study; readonly building: Building }) {
  const say = words();
  const count = building.loose.value.length;
  const open = building.jobs.open.value;
  return (
    <>
      <JobBar study={study} none={say.noJob} />
      {count > 0 && (
        <div class="row">
          {open ? (
            <LargeButton onPress={() => void building.handOver()}>
              {say.handOver(count)}
            </LargeButton>
          ) : (
            <details>
              <summary>{say.another}</summary>
              <button type="button" onClick={() => building.forget()}>
                {say.forget}
              </button>
            </details>
          )}
        </div>
      )}
    </>
  );
}

function Done({ building }: { readonly building: Building }) {
  const say = words();
  const last = building.tasks.at(-1);
  return (
    <section class="build-task" aria-labelledby="build-title">
      <h2 id="build-title" tabIndex={-1}>
        {say.built}
      </h2>
      <p>{say.signNext}</p>
      <div class="row">
        <LargeButton main onPress={() => (room.value = 'job')}>
          {say.sign}
        </LargeButton>
        {last && <LargeButton onPress={() => building.show(last.key)}>{say.before}</LargeButton>}
      </div>
    </section>
  );
}
