/** What the rules talk about: parts of the machine, entries, and what is concluded from them. */
package chock.assess.facts;
