import { amountFigure } from "#lib/kernel/money.ts";

/** Plans count in hundredths of a minor unit, because rates are that fine. */
export const planMoney = (hundredths: number, currency: string): string => `${currency} ${amountFigure(Math.round(hundredths / 100), currency).replace(/\B(?=(\d{3})+(?:\.|$))/g, ",")}`;

export const percentText = (share: number): string => `${(100 * share).toFixed(share < 0.001 && share > 0 ? 3 : 1)} %`;
