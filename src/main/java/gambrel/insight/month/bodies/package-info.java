/** The bodies of a month and of the twelve months before, with the figures that are averaged. */
package gambrel.insight.month.bodies;
