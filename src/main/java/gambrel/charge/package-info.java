/** The bill of a body: each line computed once for the whole body and divided among its owners. */
package gambrel.charge;
