/** How a reader is spoken to: words by language, names of cuts, numbers and dates. */
package gambrel.pages.words;
