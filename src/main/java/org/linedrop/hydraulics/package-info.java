/**
 * Laws of pressure loss as pure static functions on doubles, each returning value and slope and each with its
 * Formula (equation, source, range) beside it. No state, no hose, no network: a law can be read beside its textbook
 * page and tested from a table.
 */
@NullMarked
package org.linedrop.hydraulics;

import org.jspecify.annotations.NullMarked;
