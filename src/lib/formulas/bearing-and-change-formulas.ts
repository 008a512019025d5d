import type { FormulaGroup } from './formula.ts';

/** Formulas of the wheel bearing, and of changing and measuring a car. */
export const BEARING_AND_CHANGE = [
  {
    name: 'The bearing',
    formulas: [
      {
        id: 'spread',
        tex: 'a=b+d_m\\,\\tan\\alpha',
        gives: 'spread of the pressure centres, rows back to back',
        lesson: 'load-line-and-rows',
      },
      {
        id: 'row-loads',
        tex: 'F_o=F_z\\,\\frac{a/2+x}{a}\\qquad F_i=F_z-F_o',
        gives: 'loads of the outboard and the inboard row',
        note: 'load line outboard positive',
        lesson: 'load-line-and-rows',
      },
      {
        id: 'tilt',
        tex: 'K=F_z\\,x-F_y\\,R',
        gives: 'moment that tips the wheel on its bearing',
        note: 'top inboard positive; side force toward the car positive',
        lesson: 'cornering',
      },
      {
        id: 'row-loads-in-a-turn',
        tex: 'F_{o}=\\frac{F_z}{2}+\\frac{K}{a}\\qquad F_i=\\frac{F_z}{2}-\\frac{K}{a}',
        also: ['F_k = \\frac{K}{a}'],
        gives: 'loads of the rows in a turn',
        lesson: 'cornering',
      },
      {
        id: 'induced-thrust',
        tex: 'S=\\frac{F_r}{2\\,Y}',
        gives: 'induced thrust of a row',
        lesson: 'cornering',
      },
      {
        id: 'thrusts',
        tex: 'A_o=S_i+F_y\\qquad A_i=S_i',
        gives: 'thrusts where the outboard row faces the side force',
        note: 'the other way about where the inboard row does',
        lesson: 'cornering',
      },
      {
        id: 'equivalent-load',
        tex: 'P=\\begin{cases} F_r & \\text{where } F_a \\le e\\,F_r \\\\ X F_r + Y F_a & \\text{otherwise} \\end{cases}',
        gives: 'equivalent load of a row',
        lesson: 'rating-life',
      },
      {
        id: 'life',
        tex: 'L_{10}=\\left(\\frac{C}{P}\\right)^{p}',
        also: [
          '\\frac{L}{L_0} = \\left(\\frac{P_0}{P}\\right)^{p} = \\left(\\frac{1}{2}\\right)^{3} = \\frac{1}{8}',
        ],
        gives: 'rating life in millions of revolutions',
        note: 'balls p = 3, rollers p = 10/3; while P ≤ C/2',
        lesson: 'rating-life',
      },
      {
        id: 'life-as-a-way',
        tex: 's=L\\cdot 10^{6}\\cdot 2\\pi\\, r_\\text{roll}',
        gives: 'rating life as a way',
        lesson: 'rating-life',
      },
      {
        id: 'mean-load',
        tex: 'P_m=\\left(\\sum_i q_i\\, P_i^{\\,p}\\right)^{1/p}',
        gives: 'mean load of a duty, shares of revolutions',
        lesson: 'rating-life',
      },
      {
        id: 'hub-life',
        tex: 'L=\\left(L_o^{-w}+L_i^{-w}\\right)^{-1/w}',
        gives: 'life of both rows together',
        note: 'balls w = 10/9, rollers w = 9/8',
        lesson: 'rating-life',
      },
    ],
  },
  {
    name: 'Changing a car',
    formulas: [
      {
        id: 'spacer',
        tex: 'v=t-\\Delta E',
        gives: 'how far a wheel goes outboard: spacer less more inset',
        note: 'scrub radius, spindle offset and load line change by it',
        lesson: 'spacers-and-inset',
      },
      {
        id: 'wider-rim',
        tex: 'v_o=v+\\tfrac{1}{2}\\Delta B\\qquad v_i=v-\\tfrac{1}{2}\\Delta B',
        gives: 'how far the edges of a rim go outboard',
        lesson: 'spacers-and-inset',
      },
      {
        id: 'tyre',
        tex: 'D=d+2\\,w\\,\\frac{a}{100}',
        gives: 'diameter of a tyre from its size',
        note: 'rim diameter d, width w, aspect ratio a',
        lesson: 'tyres-and-camber',
      },
      {
        id: 'taller-tyre',
        tex: '\\Delta r=-\\Delta R\\,\\tan\\sigma\\qquad \\Delta n=+\\Delta R\\,\\tan\\tau',
        gives: 'scrub radius and trail of a taller tyre',
        lesson: 'tyres-and-camber',
      },
      {
        id: 'dial',
        tex: 'v=v_s\\,\\frac{D_n}{D_o}',
        gives: 'true speed behind the dial’s',
        lesson: 'tyres-and-camber',
      },
      {
        id: 'camber-at-carrier',
        tex: 'h\\,\\sin\\varphi',
        gives: 'how far the contact centre swings with camber at the carrier',
        note: 'set at the strut top, axis and wheel lean together',
        lesson: 'tyres-and-camber',
      },
      {
        id: 'clamping',
        tex: 'F=\\frac{T}{K\\,d}',
        gives: 'clamp load of a bolt from its torque',
        note: 'K about 0.2 dry: a rough value',
        lesson: 'holding-the-wheel-on',
      },
      {
        id: 'clamp-needed',
        tex: 'F_0=\\frac{F_x\\,R/r_b+V}{n\\,\\mu}\\qquad V^2=F_x^2+F_z^2',
        gives: 'clamp load that each of n fasteners needs',
        lesson: 'holding-the-wheel-on',
      },
      {
        id: 'turns',
        tex: '\\text{turns}=\\frac{h}{P}',
        gives: 'turns of a nut in its thread',
        lesson: 'holding-the-wheel-on',
      },
      {
        id: 'measured-axis',
        tex: 'q=x_L+(h-z_L)\\tan\\sigma-w',
        also: [
          '\\tan\\sigma = \\frac{x_U - x_L}{z_U - z_L}',
          'r = x_L - z_L\\tan\\sigma - (w + h\\tan\\gamma)',
        ],
        gives: 'spindle offset from a plumb line',
        lesson: 'measuring-your-own-car',
      },
      {
        id: 'measured-inset',
        tex: 'E=b-\\frac{W}{2}',
        gives: 'inset from the back of the wheel',
        lesson: 'measuring-your-own-car',
      },
      {
        id: 'uncertainty',
        tex: 'u^2=(c_1u_1)^2+(c_2u_2)^2+\\dots',
        also: ['u_E^2 = u_b^2 + \\left(\\tfrac{1}{2}u_W\\right)^2'],
        gives: 'uncertainty of a result',
        lesson: 'measuring-your-own-car',
      },
    ],
  },
] as const satisfies readonly FormulaGroup[];
