// Tests ask for quantities of all families; a page imports those that it needs.
import '#scenes/values/axle.ts';
import '#scenes/values/bearing.ts';
import '#scenes/values/fastening.ts';
import '#scenes/values/life.ts';
import '#scenes/values/swing.ts';
