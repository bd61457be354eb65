/**
 * From figures to words: how numbers and dates are printed, which language's words are taken, and
 * the customer's statement. Pure: no files, no clock.
 */
package gambrel.wording;
