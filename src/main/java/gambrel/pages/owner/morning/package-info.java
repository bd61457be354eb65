/** The morning sheet: what was read, issued and held last night, and what is to be done. */
package gambrel.pages.owner.morning;
