/** The customer's statement: from figures to its view. */
package gambrel.pages.statement;
