/** What probably went wrong with a body that does not balance: found, tried out and suggested. */
package gambrel.insight.cause;
