/**
 * Laws of pressure loss as pure functions on doubles, each returning value and slope and each with its
 * Formula (equation, source, range) and, where published laws disagree by more than a fifth, its Band beside it. Laws
 * with constants of shape worth computing once are small immutable objects made by {@code of}. No state, no hose, no
 * network: a law can be read beside its textbook page and tested from a table. Results go to an array of the caller's and
 * nothing is allocated in a law.
 */
@Inner
@NullMarked
package org.linedrop.hydraulics;

import org.jspecify.annotations.NullMarked;
import org.linedrop.fact.Inner;
