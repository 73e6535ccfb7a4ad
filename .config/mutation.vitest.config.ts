import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { area } from './mutation-areas.mjs';
import base from './vitest.config.ts';

/** What has noticed the last change comes first, then what takes least time: most changes are noticed at once. */
class QuickestFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ project, moduleId }: TestSpecification): number => {
      const path = moduleId.slice(this.ctx.config.root.length);
      const last = this.ctx.cache.getFileTestResults(`${project.name}:${path}`);
      return last?.failed ? -1 : (last?.duration ?? 0);
    };
    return Promise.resolve(files.toSorted((a, b) => rank(a) - rank(b)));
  }
}

export default {
  ...base,
  test: {
    ...base.test,
    include: area.tests,
    globalSetup: [],
    isolate: false,
    env: { RUNS: String(area.runs ?? 0.05) },
    sequence: { sequencer: QuickestFirst },
  },
};
