/** The search for a plan, which takes seconds: asked for as a job, and told how far it is. */
import { read, send, Trouble } from '../wire/http.js';

const WAIT = 150;

/** The plan of a request, or why there is none; `said` shows what the server does meanwhile. */
export async function searched(home, request, said, signal) {
  let { body: job } = await send('POST', home, { body: request, wait: false, signal });
  while (job.state === 'running') {
    await new Promise(go => setTimeout(go, WAIT));
    job = await read(`/api/jobs/${job.job}`, {}, { signal });
    said.textContent = `${job.step} …`;
  }
  if (job.state === 'failed') throw new Trouble(job.problem);
  return job.plan;
}
