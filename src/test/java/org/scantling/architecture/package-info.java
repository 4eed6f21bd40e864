/** Holds the house together: who may import whom, who may touch what, and how numbers are named. */
package org.scantling.architecture;
