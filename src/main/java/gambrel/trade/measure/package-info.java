/** Weights, money and divisions: exact, with one rounding each. */
package gambrel.trade.measure;
