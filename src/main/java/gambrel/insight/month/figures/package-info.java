/** The bodies of a month and of the twelve months before, and the types of figures and findings. */
package gambrel.insight.month.figures;
