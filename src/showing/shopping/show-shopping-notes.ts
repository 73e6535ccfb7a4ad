import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan } from '../../core/plan/result.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { warningTexts } from '../text/warning-texts.ts';

/** What should be known before ordering: it stands with the shopping list. */
export function showShoppingNotes(key: string, plan: Plan, workspace: Workspace): readonly Shown[] {
  return warningTexts(plan, workspace, isOfShopping).map((text, i) => shown(`${key}[${i}]`, text));
}

/** Whether a warning of this code is about what to buy. */
export function isOfShopping(code: string): boolean {
  return ofShopping.includes(code);
}
const ofShopping: readonly string[] = [
  'price-missing',
  'stock-without-size',
  'amount-beside-pieces',
  'arrival-unsaid',
  'faster-pack',
  'free-delivery-near',
  'opened-goes-off',
  'rest-goes-off',
];
