package org.linedrop.io;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;

/** Bytes to text: UTF-8, or UTF-16 with its byte order mark, and nothing that no keyboard writes. */
final class TextDecoder {
    /** More lines with strange characters than these mean that the file is no text. */
    private static final char HARD_SPACE = '\u00a0';

    private static final int MOST_PROBLEMS = 5;

    private TextDecoder() {}

    /**
     * Decodes and checks; line ends become a line feed, no-break spaces become spaces.
     *
     * @param file     name for the problems
     * @param bytes    the file, not modified
     * @param problems receives what is wrong
     * @return the text, meaningful when no problem was added
     */
    static String decode(String file, byte[] bytes, List<Problem> problems) {
        Charset charset = StandardCharsets.UTF_8;
        int skip = 0;
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            skip = 3;
        } else if (startsWith(bytes, 0xFE, 0xFF)) {
            charset = StandardCharsets.UTF_16BE;
            skip = 2;
        } else if (startsWith(bytes, 0xFF, 0xFE)) {
            charset = StandardCharsets.UTF_16LE;
            skip = 2;
        }
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        String text = tidy(out.toString());
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            String end = text.substring(text.lastIndexOf('\n') + 1);
            int column = 1 + end.length();
            String behind = end.length() <= 30 ? end : end.substring(end.length() - 30);
            problems.add(new Problem(
                    new Place(file, line, column, ""),
                    "",
                    "",
                    "line " + line + " is not " + charset.name() + " text"
                            + (behind.isBlank() ? "" : " behind \"" + behind.strip() + "\""),
                    "Save the file as UTF-8 in your editor"));
            return "";
        }
        return text;
    }

    /**
     * Line ends become a line feed, no-break spaces become spaces.
     *
     * @param text any text
     * @return the text with a byte order mark at its start taken off
     */
    static String tidy(String text) {
        String bare = text.startsWith("\ufeff") ? text.substring(1) : text;
        return bare.replace("\r\n", "\n").replace('\r', '\n').replace(HARD_SPACE, ' ');
    }

    /**
     * Refuses control characters, half characters and marks that cannot be seen.
     *
     * @param file name for the problems
     * @param text tidy text
     * @return one problem a line, at most five
     */
    static List<Problem> check(String file, String text) {
        List<Problem> problems = new ArrayList<>();
        int line = 1;
        int column = 0;
        int told = 0;
        for (int i = 0; i < text.length() && problems.size() < MOST_PROBLEMS; ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            column++;
            if (c == '\n') {
                line++;
                column = 0;
            } else if (told < line && !belongs(c)) {
                told = line;
                problems.add(new Problem(
                        new Place(file, line, column, ""),
                        "",
                        "",
                        "line " + line + " has " + name(c) + " in column " + column,
                        c == 0
                                ? "This is no text file, or it was saved in another encoding. Save it as UTF-8"
                                : "Delete it: it cannot be seen and does not belong in a text file"));
            }
        }
        return problems;
    }

    /**
     * Whether a character written into a file comes back as it was: all but those that are refused, and the hard space,
     * which is read as a space.
     *
     * @param c a code point
     * @return whether it may stand as it is
     */
    static boolean keeps(int c) {
        return belongs(c) && c != HARD_SPACE;
    }

    private static boolean belongs(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL -> c == '\t';
            case Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED -> false;
            default -> c != 0xFFFD;
        };
    }

    private static String name(int c) {
        if (c == 0) {
            return "a NUL character";
        }
        if (c == 0xFFFD) {
            return "a replacement character (an earlier program lost a letter here)";
        }
        return "the character U+" + String.format(java.util.Locale.ROOT, "%04X", c);
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        if (bytes.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if ((bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
