/** Captions of drawings. */
export const figureLines = {
  courseOfTemperature: ({ hasWindows }: { readonly hasWindows: boolean }): string =>
    `Predicted temperature of the charge; the numbers above are the steps.${hasWindows ? " Hatched: when and how warm particles may go in." : ""}`,
  setting: (): string => "sets",
  courseOfOil: ({ phase }: { readonly phase: string }): string => `Oil in the vessel while phase ${phase} goes in.`,
  courseOfTorque: ({ phase }: { readonly phase: string }): string =>
    `Predicted torque at the shaft while phase ${phase} goes in. Hatched: its band.`,
};
