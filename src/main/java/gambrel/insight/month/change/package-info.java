/** What changed in a month, and the explanation that covers most of it. */
package gambrel.insight.month.change;
