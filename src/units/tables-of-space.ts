/**
 * Factors to the base unit, which stands first: exact by definition, written as they are defined
 * (1 ft = 0.3048 m, 1 US gal = 231 in³). `*` and `/` are worked from left to right, as rationals.
 *
 * A name is spelled as in the SI; its ASCII spelling follows by rule (`Ascii` in `unit.ts`).
 */
export const space = {
  length: {
    m: "1",
    cm: "1e-2",
    mm: "1e-3",
    µm: "1e-6",
    nm: "1e-9",
    in: "0.0254",
    ft: "0.3048",
    yd: "0.9144",
    mil: "0.0000254",
  },
  area: {
    "m²": "1",
    "cm²": "1e-4",
    "mm²": "1e-6",
    "in²": "0.0254*0.0254",
    "ft²": "0.3048*0.3048",
  },
  volume: {
    "m³": "1",
    L: "1e-3",
    mL: "1e-6",
    "cm³": "1e-6",
    µL: "1e-9",
    "US gal": "231*0.0254*0.0254*0.0254",
    "US fl oz": "231*0.0254*0.0254*0.0254/128",
    "imp gal": "4.54609e-3",
    "imp fl oz": "4.54609e-3/160",
    "in³": "0.0254*0.0254*0.0254",
    "ft³": "0.3048*0.3048*0.3048",
  },
  time: {
    s: "1",
    ms: "1e-3",
    min: "60",
    h: "3600",
    d: "86400",
    week: "604800",
  },
  rotationalSpeed: {
    "rev/s": "1",
    "rev/min": "1/60",
    rpm: "1/60",
  },
  shearRate: {
    "1/s": "1",
    "1/min": "1/60",
  },
  velocity: {
    "m/s": "1",
    "cm/s": "1e-2",
    "mm/s": "1e-3",
    "µm/s": "1e-6",
    "m/min": "1/60",
    "mm/min": "1e-3/60",
    "mm/h": "1e-3/3600",
    "mm/d": "1e-3/86400",
    "km/h": "1e3/3600",
    "ft/s": "0.3048",
    "ft/min": "0.3048/60",
  },
} as const;
