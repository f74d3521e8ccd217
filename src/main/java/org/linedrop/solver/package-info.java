/**
 * From a network to its solution: damped Newton on sparse Cholesky with a dense border. Sees no hose and no file;
 * the only package that sees the matrix library.
 */
@NullMarked
package org.linedrop.solver;

import org.jspecify.annotations.NullMarked;
