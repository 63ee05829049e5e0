/** Thresholds that are common practice: how near is near enough, and what an experienced reader goes by. */
import { days, inches } from '../model/quantity.ts';
import { practice } from './documents.ts';
import { figure } from './figure.ts';

/** A w/cm this much over its limit still meets it. */
export const wcmTolerance = figure(0.005, practice('comparison of w/cm'));

/** A strength short by this share of the minimum still meets it. */
export const strengthTolerance = figure(0.01, practice('comparison of strength'));

/** Points of air that are lost in rounding. */
export const airRounding = figure(0.05, practice('comparison of air'));

/** A stated target may lie this many points under the table's before it counts as too low. */
export const airTargetSlack = figure(0.5, practice('target air'));

/** A size this near to one of the table, as a share of it, is that size: 20 mm is 19 mm, 5/8 in. is neither neighbour. */
export const sizeTolerance = figure(0.07, practice('nominal sizes of aggregate'));

/** Percent of air that usually protects. */
export const usuallyProtectiveAir = figure(4, practice('air that protects'));

/** Scaling takes about this much of the top. */
export const scalingDepth = figure(inches(1 / 4), practice('depth of scaling'));

/** Frost and salts do most harm in this time after placing. */
export const tenderAge = figure(days(28), practice('young concrete'));
