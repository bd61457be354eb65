/**
 * What the pages say: one record a page, all text final.
 *
 * <p>Weights stand at their scale's division, in the shop's unit and the customer's locale; places
 * in a drawing are whole numbers. A template only has to set them, never to compute. Pure: no
 * files, no clock.
 */
package gambrel.statement;
