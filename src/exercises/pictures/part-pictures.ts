/** Two ball rows back to back, cut open, with the lines through their contacts. Millimetres and radians. */
export interface ContactPicture {
  readonly scene: 'contact';
  /** From row to row, and across the circle of the ball centres. */
  readonly rows_mm: number;
  readonly circle_mm: number;
  readonly angle: number;
  readonly measures: readonly ContactMark[];
  /** Whether the lines are drawn down to the spin axis. */
  readonly isSolved: boolean;
  /** How far a line reaches by the road that was taken, or what was taken for the spread. */
  readonly wrong?: { readonly reach_mm?: number; readonly spread_mm?: number };
}

export interface ContactMark {
  readonly of: 'rows' | 'circle' | 'reach' | 'spread' | 'angle';
  readonly says: string;
}

/** A rim cut across, on its hub, seen from the front; the hub's face at nought, outboard positive. Millimetres. */
export interface WheelPicture {
  readonly scene: 'wheel';
  readonly wheel: Rim;
  readonly before?: Rim;
  readonly spacer_mm?: number;
  /** Where the strut stands, inboard of the rim. */
  readonly strut_mm?: number;
  readonly measures: readonly WheelMark[];
  /** Where the road that was taken has the rim, or one place of it alone. */
  readonly wrong?: {
    readonly wheel?: Rim;
    readonly at_mm?: number;
    readonly from_mm?: number;
  };
}

export interface Rim {
  readonly middle_mm: number;
  readonly width_mm: number;
}

export interface WheelMark {
  /** `move`: of the middle; `inset`: from the middle to the hub; `back`: from the inner edge to the hub. */
  readonly of: 'move' | 'inset' | 'spacer' | 'width' | 'half' | 'back' | 'clearance' | 'innerMove';
  readonly says: string;
}

/** A bolt or a stud along its length, the seat at nought. Millimetres. */
export interface BoltPicture {
  readonly scene: 'bolt';
  /** From the seat to the end of the thread. */
  readonly length_mm: number;
  /** What lies between seat and thread: the wheel, a spacer. */
  readonly wheel_mm: number;
  readonly spacer_mm: number;
  /** Whether a nut holds it: then the thread that counts begins at the seat. */
  readonly nut?: boolean;
  readonly measures: readonly BoltMark[];
  /** How much thread holds by the road that was taken, from where it begins. */
  readonly wrong_mm?: number;
}

export interface BoltMark {
  readonly of: 'length' | 'wheel' | 'spacer' | 'engaged' | 'thread';
  readonly says: string;
  /** Of a thread that is asked for. */
  readonly long_mm?: number;
}

/** A tyre on its rim from the side, standing on the road. Millimetres. */
export interface TyrePicture {
  readonly scene: 'tyre';
  readonly tyre: TyreSize;
  readonly before?: TyreSize;
  readonly measures: readonly TyreMark[];
  /** The outer diameter by the road that was taken. */
  readonly wrong_mm?: number;
}

export interface TyreSize {
  readonly diameter_mm: number;
  readonly rim_mm: number;
}

export interface TyreMark {
  readonly of: 'diameter' | 'rim' | 'height';
  readonly says: string;
}
