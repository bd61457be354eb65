/** The one change that would make a body balance: looked for, tried out, suggested, never applied. */
package gambrel.cause;
