/** The shop folder as values: bodies, customers, codes, scales, prices and decisions. */
package gambrel.trade.shop;
