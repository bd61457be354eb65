/** Issued statements, their revisions, and the plan of statements to issue. */
package gambrel.trade.register;
