/** The owner's pages: what the month and the morning sheet share. */
package gambrel.pages.owner;
