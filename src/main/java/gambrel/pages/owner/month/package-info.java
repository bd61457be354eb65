/** The owner's month: from its report to the view of the summary. */
package gambrel.pages.owner.month;
