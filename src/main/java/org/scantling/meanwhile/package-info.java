/** Work that goes on meanwhile, on another core. */
package org.scantling.meanwhile;
