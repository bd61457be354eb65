/** Everything that is known of the shop at one moment, put together. */
package gambrel.trade.reckoning;
