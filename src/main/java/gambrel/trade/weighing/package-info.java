/** From export rows to the weighings that count. */
package gambrel.trade.weighing;
