import type { DRIVES, FixingDocument, SUSPENSIONS } from '#core/judgement/bench-document.ts';

interface Option<Value> {
  readonly value: Value;
  readonly name: string;
}

export const SUSPENSION_OPTIONS: readonly Option<(typeof SUSPENSIONS)[number]>[] = [
  { value: 'strut', name: 'Strut' },
  { value: 'double-arm', name: 'Upper and lower arm' },
];

export const DRIVE_OPTIONS: readonly Option<(typeof DRIVES)[number]>[] = [
  { value: 'front', name: 'Front' },
  { value: 'rear', name: 'Rear' },
  { value: 'four', name: 'All four' },
];

export const FASTENER_OPTIONS: readonly Option<FixingDocument['fastener']>[] = [
  { value: 'bolt', name: 'Bolts into the hub' },
  { value: 'stud', name: 'Studs with nuts' },
];

export const SEAT_OPTIONS: readonly Option<FixingDocument['seat']>[] = [
  { value: 'cone', name: 'Cone' },
  { value: 'ball', name: 'Ball' },
  { value: 'flat', name: 'Flat collar' },
];
