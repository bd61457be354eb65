/**
 * The bodies of a month and of the twelve months before, with the figures of which averages are
 * made.
 */
package gambrel.insight.month.bodies;
