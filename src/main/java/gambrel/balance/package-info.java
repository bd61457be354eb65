/**
 * Where each body's mass went: rail, chiller, boning room, box, batch, bin, and what is left over.
 * Pure: no files, no clock.
 */
package gambrel.balance;
