/** Work put off until somebody asks for it, or begun before that on another core. */
package org.scantling.concurrent;
