/**
 * Boning rooms that are made from the contract and the manual alone. Who wrote them had not read
 * how causes and findings are looked for. Each room is a shop folder; it is sound, or one thing in
 * it is wrong and known, so that what the program says can be held against the truth.
 */
package gambrel.outside;
