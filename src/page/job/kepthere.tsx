import { keeping, nearlyFull } from './keeping.ts';
import { words } from './words.ts';
import './job.css';

/** That the browser keeps nothing of a job, or soon has no room for more: told before it hurts. */
export function KeptHere() {
  const say = words();
  return (
    <>
      {keeping.value === 'nothing' && <p class="job-odd">{say.keepsNothing}</p>}
      {nearlyFull.value && <p class="job-odd">{say.nearlyFull}</p>}
    </>
  );
}
