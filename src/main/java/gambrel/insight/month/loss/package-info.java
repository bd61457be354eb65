/** Losses of a month: charts, shifts of the mean, days in the chiller, days hung. */
package gambrel.insight.month.loss;
