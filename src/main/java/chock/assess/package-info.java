/** The reasoning: facts go into the Drools session, findings come out; verdicts per gate. The only clock is a parameter. */
package chock.assess;
