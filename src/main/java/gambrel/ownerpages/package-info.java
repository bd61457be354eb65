/** What the owner reads: the month's summary and the morning sheet, from figures to views. Pure. */
package gambrel.ownerpages;
