/** Exact numbers: weights, money, shares and the one way each is rounded. Depends on nothing else. */
package gambrel.measure;
