/** The data files as tables of text: what each column holds, in which order rows stand. Pure. */
package gambrel.data;
