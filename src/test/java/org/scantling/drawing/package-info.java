/** Tests of the drawings. */
package org.scantling.drawing;
