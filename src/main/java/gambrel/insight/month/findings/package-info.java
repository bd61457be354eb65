/** The types of a month's figures and findings, and the comparisons that several rooms share. */
package gambrel.insight.month.findings;
