/** Shares, charges and payments: who gets what, and for how much. */
package gambrel.trade.account;
