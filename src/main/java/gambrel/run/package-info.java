/** One night from shop folder to output folder: the order of work. */
package gambrel.run;
