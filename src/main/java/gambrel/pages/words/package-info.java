/** The language of a reader: words, names of cuts, numbers and dates. */
package gambrel.pages.words;
