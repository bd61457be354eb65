/** Control charts, means and lines: the only package that uses the statistics library. */
package gambrel.insight.statistics;
