/**
 * Questions people ask, as pure functions from circuits to immutable answers: is this feed undersized, rubber or
 * PTFE, where is the loss. The only package that sees Commons Math.
 */
@NullMarked
package org.linedrop.study;

import org.jspecify.annotations.NullMarked;
