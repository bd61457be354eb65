/** The mass balance of bodies, pieces and batches: input, output and loss. */
package gambrel.trade.balance;
