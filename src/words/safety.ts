/** What is said of every model, wherever it is met: pages, sheets, labels, plans. */
export const safetyWords = {
  trainingOnly: 'For training only, never for patient care.',
  /** Always said, whatever a guide says of its storage. */
  apart: 'Store apart from clinical stock.',
  /** In full at the head of what can hurt. */
  defers:
    'Local policy first (ask {contact}), then the supplier’s data sheet, then this guide; it does not replace licensed practice.',
  /** In one line, where a step says once more what can hurt. */
  defersAtStep: 'Local policy first (ask {contact}), then the data sheet, then this.',
  /** Where the program names nobody to ask. */
  whoeverAnswers: 'whoever answers for safety where you work',
  /** For other programs, which get the policy itself beside it. */
  order:
    'Local policy first, then the supplier’s data sheet, then this guide; it does not replace licensed practice.',
  electrosurgery: {
    no: 'No electrosurgery on this model.',
    unsaid: 'No electrosurgery on this model: its guide does not say that it is safe.',
    yes: 'Electrosurgery may be used on this model.',
  },
} as const;
