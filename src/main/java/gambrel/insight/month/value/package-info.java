/** What cuts are worth beside other ways to cut. */
package gambrel.insight.month.value;
