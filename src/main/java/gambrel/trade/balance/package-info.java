/** The mass of a body, a piece and a batch: what went in, what came out, what was lost. */
package gambrel.trade.balance;
