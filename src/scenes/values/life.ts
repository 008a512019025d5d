import { lifeValue } from '../corner/rolling.ts';
import { provideFamily } from './families.ts';

provideFamily('life', {
  value: (id, { model, setting }) => lifeValue(id, model, setting),
  ratios: {},
});
