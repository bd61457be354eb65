/** What bodies yield, and how boners compare. */
package gambrel.insight.month.yields;
