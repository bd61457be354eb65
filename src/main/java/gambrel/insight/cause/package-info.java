/** Suggests what probably went wrong with a body that does not balance. */
package gambrel.insight.cause;
