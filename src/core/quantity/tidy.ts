/**
 * The text with one spelling for what keyboards spell in many ways: any space is one plain space, any dash that
 * stands for minus is `-`, `½` is ` 1/2`, and no space at either end. En and em dashes stay: they are ranges.
 */
export function tidy(text: string): string {
  return text
    .replace(/[\u2212\u2010\u2011]/g, '-')
    .replace(/\u2044/g, '/')
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (character) => ` ${vulgarFractions[character]}`)
    .replace(/\s+/gu, ' ')
    .trim();
}

const vulgarFractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
