import { axleValueOf } from '../axle/axle-values.ts';
import { provideFamily } from './families.ts';

provideFamily('axle', { value: axleValueOf, ratios: {} });
