package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.io.CircuitFile;
import org.linedrop.study.FeedCheck;

/**
 * Output as it was read and found good. After a change that is meant, run the output tests once with
 * {@code -Dgolden.write=true} and read the difference before committing it.
 */
public final class Golden {
    private static final Path HERE = Path.of("src/test/resources/org/linedrop/report");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.'-])-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?(?![\\w.])");
    /** Processors differ in the last digits of a logarithm, and whole residuals are made of such digits. */
    private static final MathContext DIGITS = new MathContext(9);

    private static final BigDecimal NOTHING = new BigDecimal("1e-12");

    private Golden() {}

    public static FeedCheck example(String name) {
        return check(Path.of("src/examples").resolve(name));
    }

    static FeedCheck own(String name) {
        return check(HERE.resolve(name));
    }

    private static FeedCheck check(Path file) {
        try {
            return FeedCheck.of(CircuitFile.read(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Byte for byte. */
    public static void same(String name, String text) {
        assertThat(text).isEqualTo(kept(name, text));
    }

    /** Byte for byte, but for numbers, which count to nine digits. */
    public static void sameToNineDigits(String name, String text) {
        assertThat(rounded(text)).isEqualTo(rounded(kept(name, text)));
    }

    private static String kept(String name, String text) {
        Path file = HERE.resolve(name);
        try {
            if (Boolean.getBoolean("golden.write")) {
                Files.writeString(file, text);
            }
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String rounded(String text) {
        Matcher number = NUMBER.matcher(text);
        return number.replaceAll(found -> {
            BigDecimal value = new BigDecimal(found.group());
            boolean nothing = value.abs().compareTo(NOTHING) < 0;
            return nothing ? "0" : value.round(DIGITS).stripTrailingZeros().toString();
        });
    }
}
