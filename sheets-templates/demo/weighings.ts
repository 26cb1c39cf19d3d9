// An invented weighing record: 1,698 x 84.1 + 4 x 126.65 = 143,308.4 over 1,702 is 84.2, the empty aircraft of the demonstration.
export const demoWeighings: readonly {
  readonly aircraft: string;
  readonly day: string;
  readonly what: 'weighing' | 'change';
  readonly weight: number;
  readonly arm: number;
  readonly remark: string;
}[] = [
  { aircraft: 'Quillon Four', day: '2024-04-12', what: 'weighing', weight: 1698, arm: 84.1, remark: 'on three scales' },
  { aircraft: 'Quillon Four', day: '2025-06-10', what: 'change', weight: 4, arm: 126.65, remark: 'transmitter, aft' },
];
