/** Names of days and months, and how a moment is written. */
export const calendarWords = {
  days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  months: [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ],
  /** "Mon 30 November" */
  date: '{weekday} {day} {month}',
  /** Where the year is not that of the start. */
  dateWithYear: '{weekday} {day} {month} {year}',
  /** A day of a record: "3 August 2026". */
  recordDate: '{day} {month} {year}',
  /** A day of the reference week. */
  referenceDay: 'day {n}',
  /** "day 2, 09:00" */
  moment: '{day}, {time}',
} as const;

/** Signs of currencies, put before the number. A currency without one stands with its code: "CHF 12.00". */
export const currencySigns: Readonly<Record<string, string>> = {
  AUD: 'A$',
  BRL: 'R$',
  CAD: 'C$',
  CNY: 'CN¥',
  EUR: '€',
  GBP: '£',
  GHS: 'GH₵',
  HKD: 'HK$',
  ILS: '₪',
  INR: '₹',
  JPY: '¥',
  KRW: '₩',
  MXN: 'MX$',
  NGN: '₦',
  NZD: 'NZ$',
  PHP: '₱',
  SGD: 'S$',
  USD: '$',
  VND: '₫',
  ZAR: 'R',
};
