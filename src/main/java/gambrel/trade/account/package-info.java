/** Shares, charges and payments of a body's owners. */
package gambrel.trade.account;
