/** Work put off until somebody asks for it, or begun before that on another core. */
@NullMarked
package org.scantling.concurrent;

import org.jspecify.annotations.NullMarked;
