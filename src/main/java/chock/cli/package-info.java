/** The commands. Each reads its input, asks the rooms below, and prints. */
package chock.cli;
