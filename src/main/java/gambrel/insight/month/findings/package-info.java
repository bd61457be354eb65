/** What a figure and a finding of a month are, with their typed values. */
package gambrel.insight.month.findings;
