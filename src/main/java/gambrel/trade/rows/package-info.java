/** Rows of exports as text: corrected, timed and compared with each other. */
package gambrel.trade.rows;
