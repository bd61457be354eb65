/** What each owner of a body gets of it. */
package gambrel.owner;
