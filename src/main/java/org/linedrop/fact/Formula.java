package org.linedrop.fact;

import java.io.Serializable;

/**
 * A law as a handbook would cite it.
 *
 * @param title    its name in the field
 * @param equation the equation in plain text
 * @param source   where it is published and how good that is
 * @param validity range of use and expected error
 */
public record Formula(String title, String equation, Source source, String validity) implements Serializable {}
