/** Whether a statement goes out, and the numbers that decide it. */
package gambrel.trade.decision;
