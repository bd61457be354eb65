/** The one change that would make a body balance: found, tried out, suggested, never applied. */
package gambrel.cause;
