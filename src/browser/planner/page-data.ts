export type { PageData } from '../../core/plan/own/page-data.ts';
export type { OwnPack, OwnSettings } from '../../core/plan/own/own-settings.ts';
