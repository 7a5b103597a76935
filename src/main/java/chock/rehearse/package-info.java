/** Living rules: the steps in which scenarios speak of machines, entries and findings. */
package chock.rehearse;
