/** One month of the shop: its figures and findings, made once for data files and pages. */
package gambrel.insight.month;
