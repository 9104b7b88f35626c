import type { Suspicion } from '../../asking/faults/index.ts';
import { faultText } from '../../engine/faults/index.ts';
import { type Cause } from '../../engine/cause/index.ts';
import { type Observation, type Proposal } from '../../engine/suspects/index.ts';
import { type TestOutcome, type Sight, testText } from '../../engine/sight/index.ts';
import type { StoppedTest } from '../../engine/triage/index.ts';
import { type Json, numberJson } from './json.ts';

/**
 * Tests are named as in a file of what was seen, faults as for --fault; chances are from 0 to
 * 1, `bits` the information that a test is expected to give.
 */
export function suspectsJson(suspicion: Suspicion): Json {
  const { observations, ranking, advice, doubts, again, pairs, growlers, failures } = suspicion;
  return {
    seen: observations.map(observationJson),
    ...(suspicion.at && { at: suspicion.at }),
    suspects: ranking.brackets.map(({ chance, suspects, evidence }) => ({
      chance,
      bracket: suspects.map(({ cause, chance: its }) => ({ ...causeJson(cause), chance: its })),
      evidence: evidence.map(({ observation, of, factor, would }) => {
        const other = would && { would: outcomeJson(would) };
        const some = of && { of: of.map(causeJson) };
        return { ...observationJson(observation), ...some, factor, ...other };
      }),
    })),
    enough: ranking.enough,
    proofs: suspicion.proofs.map(({ cause, explained }) => ({
      ...causeJson(cause),
      explained: explained.map(({ observation, shows, agrees, by }) => {
        return { ...observationJson(observation), shows: outcomeJson(shows), agrees, by };
      }),
    })),
    doubts: doubts.map(({ observations: doubted, causes }) => {
      return { observations: doubted.map(observationJson), causes: causes.map(causeJson) };
    }),
    again: again.map(testText),
    pairs: pairs.map(causeJson),
    rereads: advice.again,
    next: advice.best ? proposalJson(advice.best) : null,
    others: advice.others.map(proposalJson),
    failures: failures.map(({ root, of, by, explains }) => ({
      root,
      ...(of !== undefined && { of }),
      ...(by !== undefined && { by }),
      explains: explains.map(({ sign, of: its }) => ({
        sign,
        ...(its !== undefined && { of: its }),
      })),
    })),
    growlers: growlers.map(({ part, because, loadedIn }) => {
      return { ...part, because, loadedIn: [...loadedIn] };
    }),
    stops: advice.stops.map(stopJson),
    heldBack: advice.heldBack.map(({ test, first, must, shown }) => {
      return { test: testText(test), first, must, shown };
    }),
  };
}

function proposalJson({ test, bits, minutes, opening, practised, parts }: Proposal): Json {
  return {
    test: testText(test),
    bits,
    minutes,
    opening,
    risk: practised.risk,
    with: practised.with,
    parts: parts.map(({ outcome, chance, suspects }) => {
      return { outcome: outcomeJson(outcome), chance, leaves: suspects.map(causeJson) };
    }),
  };
}

function stopJson({ stops, bars, left }: StoppedTest): Json {
  return {
    stops,
    because: bars.map((bar) => {
      const seen = 'because' in bar ? bar.because.map(observationJson) : [];
      return { why: bar.why, seen };
    }),
    left: Object.fromEntries([...left].map(([place, tests]) => [place, [...tests]])),
  };
}

function observationJson({ test, sight, sure }: Observation) {
  return { test: testText(test), saw: sightJson(sight), sure: sure === 'sure' };
}

function causeJson({ cause, faults, at }: Cause) {
  return { cause, faults: faults.map(faultText), ...(at !== undefined && { at }) };
}

function sightJson(sight: Sight): Json {
  return sight.saw === 'ratio' ? sight.ratio : sight.saw;
}

function outcomeJson({ word, ratio }: TestOutcome): Json {
  return ratio ? { word, ratio: numberJson(ratio) } : { word };
}
