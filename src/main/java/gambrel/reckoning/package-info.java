/** Puts a night together: the ledger, every balance, every bill, every decision. Pure. */
package gambrel.reckoning;
