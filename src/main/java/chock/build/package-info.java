/** Steps of the build that rewrite compiled classes. Nothing of the program uses it. */
package chock.build;
