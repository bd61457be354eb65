/** Issued statements, their revisions, and what is to be issued next. */
package gambrel.trade.register;
