import { BEARING_AND_CHANGE } from './bearing-and-change-formulas.ts';
import type { FormulaGroup } from './formula.ts';

/** Every formula of the course, in its order. */
export const FORMULAS = [
  {
    name: 'The steering axis',
    formulas: [
      {
        id: 'inclination',
        tex: '\\tan\\sigma=\\frac{\\Delta y}{\\Delta z}\\quad \\tan\\tau=\\frac{\\Delta x}{\\Delta z}',
        also: [
          '\\tan\\sigma = \\frac{\\text{pivots apart across}}{\\text{pivots apart in height}}',
          '\\tan\\tau = \\frac{\\text{pivots apart along}}{\\text{pivots apart in height}}',
        ],
        gives: 'inclination and caster from the pivots',
        note: 'apart across, along and in height; top inboard, top rearward positive',
        lesson: 'two-points',
      },
      {
        id: 'included-angle',
        tex: '\\sigma+\\gamma',
        gives: 'included angle',
        note: 'belongs to the carrier: bent if it is off',
        lesson: 'two-points',
      },
      {
        id: 'ground-point',
        tex: 'y_G=y_L+z_L\\tan\\sigma',
        gives: 'where the axis meets the road, from the middle of the car',
        lesson: 'at-the-road',
      },
      {
        id: 'scrub-radius',
        tex: 'r=y_P-y_G',
        gives: 'scrub radius',
        note: 'positive when the axis meets the road inboard of the contact centre',
        lesson: 'at-the-road',
      },
      {
        id: 'spindle-offset',
        tex: 'q=r+R\\tan\\sigma',
        also: ['r = q - R\\tan\\sigma'],
        gives: 'spindle offset, upright wheel',
        note: 'positive when the axis passes inboard of the wheel centre',
        lesson: 'at-the-wheel-centre',
      },
      {
        id: 'caster-offset',
        tex: 'n_C=n-R\\tan\\tau',
        gives: 'caster offset at the wheel centre, from the trail',
        note: 'positive when the axis passes ahead',
        lesson: 'at-the-wheel-centre',
      },
    ],
  },
  {
    name: 'The wheel turns',
    formulas: [
      {
        id: 'camber-when-steered',
        tex: '\\gamma\\approx\\gamma_0+\\sigma(1-\\cos\\delta)+\\tau\\sin\\delta',
        also: [
          '\\gamma_\\sigma \\approx \\sigma\\,(1-\\cos\\delta)',
          '\\gamma_\\tau \\approx \\tau\\,\\sin\\delta',
        ],
        gives: 'camber of a steered wheel',
        note: 'δ positive when the wheel is turned out',
        lesson: 'the-wheel-turns',
      },
      {
        id: 'front-lift',
        tex: 'h_m\\approx(q\\tan\\sigma-n\\tan\\tau)(1-\\cos\\delta)',
        gives: 'lift of the middle of the front',
        note: 'positive: raised, so the weight steers back',
        lesson: 'the-wheel-turns',
      },
      {
        id: 'caster-by-swing',
        tex: '\\tau\\approx\\frac{\\gamma_\\text{out}-\\gamma_\\text{in}}{2\\sin\\delta}',
        gives: 'caster by a swing, brake free',
        lesson: 'the-wheel-turns',
      },
      {
        id: 'inclination-by-swing',
        tex: '\\sigma\\approx\\frac{\\varphi_\\text{out}-\\varphi_\\text{in}}{2\\sin\\delta}',
        gives: 'inclination by a swing, brake held',
        lesson: 'the-wheel-turns',
      },
      {
        id: 'weight-lever',
        tex: 'n\\tan\\sigma+r\\tan\\tau',
        gives: 'lever of the wheel load about the axis',
        note: 'straight ahead; turns the wheel inward when positive',
        lesson: 'alignment-sheet',
      },
    ],
  },
  {
    name: 'Forces and levers',
    formulas: [
      {
        id: 'brake-torque',
        tex: 'T=F\\,R',
        gives: 'torque that brake or shaft holds',
        lesson: 'what-the-carrier-feels',
      },
      {
        id: 'moment-at-centre',
        tex: 'M=F\\,q\\,u_z',
        gives: 'moment of drive, recuperation, blow',
        note: 'forward force: toe-in; rearward: toe-out, for positive q',
        lesson: 'what-the-carrier-feels',
      },
      {
        id: 'moment-at-road',
        tex: 'M=F\\,r\\,u_z',
        gives: 'moment of braking, brake on the carrier',
        note: 'toe-out for positive r',
        lesson: 'braking-at-the-ground',
      },
      {
        id: 'shaft-couple',
        tex: 'K=T\\tan\\frac{\\delta}{2}',
        gives: 'couple of a shaft at the angle δ',
        lesson: 'braking-at-the-ground',
      },
      {
        id: 'rod-force',
        tex: 'N=\\frac{M}{a}',
        gives: 'tie-rod force',
        note: 'tension positive',
        lesson: 'from-axis-to-hands',
      },
      {
        id: 'hands',
        tex: 'T=\\frac{F_r\\,s}{2\\pi\\,k}\\quad F_h=\\frac{T}{R_h}',
        gives: 'torque and force at the steering wheel',
        note: 'to the left positive',
        lesson: 'from-axis-to-hands',
      },
    ],
  },
  {
    name: 'Both sides, side forces, standing still',
    formulas: [
      {
        id: 'both-brakes',
        tex: 'M=(F_l-F_r)\\,r\\,u_z',
        gives: 'moment of both brakes on the steering',
        note: 'to the left positive; toward the weaker brake for negative r',
        lesson: 'left-against-right',
      },
      {
        id: 'yaw',
        tex: 'M_c=(F_l-F_r)\\,\\frac{t}{2}',
        gives: 'yaw moment of unequal braking',
        note: 'to the left positive',
        lesson: 'left-against-right',
      },
      {
        id: 'side-moment',
        tex: 'M=F\\,(n+t)\\,u_z',
        gives: 'moment of a side force',
        note: 'n mechanical, t pneumatic trail; steers back',
        lesson: 'side-weight-parking',
      },
      {
        id: 'weight-moment',
        tex: 'a=(n\\tan\\sigma+r\\tan\\tau)\\,u_z',
        gives: 'lever of the wheel load, straight ahead',
        note: 'left and right cancel in the rack',
        lesson: 'side-weight-parking',
      },
      {
        id: 'self-return',
        tex: 'M=2\\,W\\,\\bigl(r+(q-r)\\cos\\delta\\bigr)\\,\\sin\\sigma\\,\\sin\\delta',
        gives: 'moment of both wheel loads on lock, by rule',
        note: 'steers back to straight',
        lesson: 'side-weight-parking',
      },
      {
        id: 'parking',
        tex: 'M=\\mu\\,W\\,a\\qquad a^2=(B/3)^2+r^2',
        also: ['M = \\frac{\\mu}{3}\\,W\\,b\\qquad b^2 = W/p'],
        gives: 'parking moment of one wheel, free to roll',
        lesson: 'side-weight-parking',
      },
    ],
  },
  ...BEARING_AND_CHANGE,
] as const satisfies readonly FormulaGroup[];
