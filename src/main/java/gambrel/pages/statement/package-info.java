/** Composes the views of customers' statements from figures. */
package gambrel.pages.statement;
