/** The command line. Only this package deals with options, streams and exit codes. */
package gambrel.cli;
