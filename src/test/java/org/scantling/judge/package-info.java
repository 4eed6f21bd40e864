/**
 * An outside judge: it works every structure again from the site file and the printed proposal.
 *
 * <p>It may share nothing with what it judges. It is written from NDS 2018, ASCE 7-16 and IBC 1807,
 * with solvers of its own, and it reaches the program only through its command line. From the rule
 * tables it reads the published values as text; what is done with them is its own.
 */
package org.scantling.judge;
