import { bySwing } from '../corner/swing-values.ts';
import { provideFamily } from './families.ts';

provideFamily('swing', { value: (id, { ahead }) => bySwing(id, ahead), ratios: {} });
