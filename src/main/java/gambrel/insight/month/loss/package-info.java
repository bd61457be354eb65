/** Losses of a month: charts, days in the chiller, days hung. */
package gambrel.insight.month.loss;
