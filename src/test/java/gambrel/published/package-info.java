/**
 * Published tables, entered as weighings and carried through the whole nightly run. The tables lie
 * in the resources of this package, each beside a text that names its source.
 */
package gambrel.published;
