/** In which order and under which heading findings are told; no document in here. */
import { firmness } from '../parts/verdict.js';

const SEVERITIES = ['high', 'moderate', 'low', 'none'];

export const stands = verdict => verdict === 'confirmed' || verdict === 'likely';

/** Whether an answer to the question of his duty could make the finding stand, or take it away. */
export function dutyMatters(one) {
  if (!one.bounds?.length && one.polarity !== 'conditional') return false;
  if (!one.bounds?.length || (stands(one.verdict) && one.polarity !== 'conditional')) return false;
  return stands(one.verdict) || one.conditional.some(duty => stands(duty.verdict));
}

/** Most telling first: what touches safety, then the firmest, the gravest, the surest. */
export function tellingOrder(a, b) {
  const safe = one => (one.safety && one.events > 0 ? 0 : 1);
  return safe(a) - safe(b) || rank(a) - rank(b) || SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity)
    || (b.probability ?? 0) - (a.probability ?? 0) || (a.finding < b.finding ? -1 : 1);
}

const rank = one => (one.verdict === 'cleared' ? 3 : one.verdict === 'not-enough-tape' ? 4 : firmness(one.verdict));

/**
 * Findings by heading. Told in full: gaps, strengths, notes, what hangs on duty, what is open. In a line each: the rest.
 * @param {Array<Object>} findings of one assessment
 */
export function groups(findings) {
  const all = [...findings].sort(tellingOrder);
  const duty = all.filter(dutyMatters);
  const rest = all.filter(one => !duty.includes(one));
  const standing = polarity => rest.filter(one => stands(one.verdict) && polarity(one.polarity));
  return {
    gaps: standing(p => p === 'gap'),
    strengths: standing(p => p === 'strength'),
    notes: standing(p => p !== 'gap' && p !== 'strength'),
    duty,
    open: rest.filter(one => one.verdict === 'watch'),
    cleared: rest.filter(one => one.verdict === 'cleared' && one.polarity !== 'strength'),
    notStrengths: rest.filter(one => one.verdict === 'cleared' && one.polarity === 'strength'),
    thin: rest.filter(one => one.verdict === 'not-enough-tape' && one.opportunities > 0),
    unseen: rest.filter(one => one.verdict === 'not-enough-tape' && one.opportunities === 0),
  };
}

/** Duties with the same count stand in one line: "if box or contain: 7 of 24". */
export function ifThen(conditional) {
  const lines = [];
  for (const one of conditional) {
    const same = one.assignment !== 'another' && lines.find(line => !line.another
      && line.events === one.events && line.opportunities === one.opportunities && line.verdict === one.verdict);
    if (same) same.duties.push(one.assignment);
    else lines.push({ duties: [one.assignment], another: one.assignment === 'another', events: one.events, opportunities: one.opportunities, verdict: one.verdict });
  }
  return lines;
}

/** How large he is, in the units of the trade. */
export function build({ heightCm, weightKg, armCm }) {
  const parts = [];
  if (heightCm) {
    const inches = Math.round(heightCm / 2.54 * 2) / 2;
    parts.push(`${Math.floor(inches / 12)} ft ${inches % 12} in`);
  }
  if (weightKg) parts.push(`${Math.round(weightKg / 0.45359237)} lb`);
  if (armCm) parts.push(`arm ${Math.round(armCm / 2.54 * 8) / 8} in`);
  return parts;
}
