/**
 * The thin runner: arguments in, report out, exit code. Everything it does can be done with the library.
 */
@NullMarked
package org.linedrop.cli;

import org.jspecify.annotations.NullMarked;
