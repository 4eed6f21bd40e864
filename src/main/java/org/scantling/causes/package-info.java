/**
 * Which demands and which other changes are to blame for a change, or for there being no answer.
 */
package org.scantling.causes;
