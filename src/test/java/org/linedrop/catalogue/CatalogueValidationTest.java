package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.fact.Figure;

/**
 * The dimensions that standards and manuals print, row by row. The cases are the metric columns (or the fractions of
 * an inch) of the prints, the catalogue holds mostly their inch columns, so a slip in either shows.
 */
class CatalogueValidationTest {
    private static final Catalogue ALL = Catalogue.standard();
    private static final List<String> FILES =
            List.of("hose_bores", "sizes_and_threads", "end_bores", "ratings", "tubes", "cut_off_lengths");

    /** Room for binary arithmetic on top of the print's own rounding; relative. */
    private static final double ARITHMETIC = 1e-9;

    record Case(String file, NamedCsvRecord row) {
        String quantity() {
            return row.getField("quantity");
        }

        String key() {
            return row.getField("key");
        }

        double expectedSi() {
            return Double.parseDouble(row.getField("expected_si"));
        }

        double toleranceSi() {
            return Double.parseDouble(row.getField("tolerance_si")) + ARITHMETIC * Math.abs(expectedSi());
        }

        /** The figure as printed, converted here: the SI column must say the same. */
        double printedSi() {
            return si(number(row.getField("printed")), row.getField("printed_unit"));
        }

        double relative() {
            return deviation() / expectedSi();
        }

        double deviation() {
            return Math.abs(catalogueValue(quantity(), key()) - expectedSi());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"hose_bores", "sizes_and_threads", "end_bores", "ratings", "tubes", "cut_off_lengths"})
    void reproducesThePrint(String file) {
        List<Case> cases = cases(file);
        assertThat(cases)
                .hasSizeGreaterThan(40)
                .allSatisfy(c -> assertThat(c.deviation())
                        .as(
                                "%s %s printed %s %s",
                                c.quantity(), c.key(), c.row.getField("printed"), c.row.getField("printed_unit"))
                        .isLessThanOrEqualTo(c.toleranceSi()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"hose_bores", "sizes_and_threads", "end_bores", "ratings", "tubes", "cut_off_lengths"})
    void theSiColumnIsThePrint(String file) {
        assertThat(cases(file))
                .allSatisfy(c -> assertThat(c.printedSi())
                        .as("%s %s", c.quantity(), c.key())
                        .isCloseTo(c.expectedSi(), within(1e-14 * Math.abs(c.expectedSi()))));
    }

    /**
     * Rows of the claims table.
     *
     * @return claim, count, source, kind, tolerance and why, worst deviation, its case
     */
    static List<String[]> claims() {
        List<String[]> claims = new ArrayList<>();
        for (String file : FILES) {
            List<Case> cases = cases(file);
            Case worst = cases.get(0);
            for (Case c : cases) {
                worst = c.relative() > worst.relative() ? c : worst;
            }
            claims.add(new String[] {
                claim(file),
                Integer.toString(cases.size()),
                "standards, manuals and makers' tables named row by row in `catalogue/" + file + ".csv`",
                "published",
                "half a unit of the last decimal printed; inch figures exactly",
                deviation(worst.relative()),
                worst.quantity() + " " + worst.key().replace(" | ", ", ")
            });
        }
        return claims;
    }

    /**
     * Every compared figure.
     *
     * @return claim, case, quantity, expected, unit, deviation, tolerance
     */
    static List<String[]> results() {
        List<String[]> results = new ArrayList<>();
        for (String file : FILES) {
            for (Case c : cases(file)) {
                results.add(new String[] {
                    claim(file),
                    c.key().replace(" | ", ", "),
                    c.quantity(),
                    c.row.getField("expected_si"),
                    c.row.getField("si_unit"),
                    deviation(c.relative()),
                    String.format(Locale.ROOT, "%.1e", c.toleranceSi() / c.expectedSi())
                });
            }
        }
        return results;
    }

    private static String claim(String file) {
        return "catalogue: " + file.replace('_', ' ');
    }

    /** Under 1e-12 is rounding, which may differ between machines. */
    private static String deviation(double relative) {
        return relative < 1e-12 ? "under 1e-12" : String.format(Locale.ROOT, "%.1e", relative);
    }

    private static List<Case> cases(String file) {
        List<Case> cases = new ArrayList<>();
        InputStream in = Objects.requireNonNull(
                CatalogueValidationTest.class.getResourceAsStream("/validation/catalogue/" + file + ".csv"), file);
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (NamedCsvRecord row : reader) {
                cases.add(new Case(file, row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return cases;
    }

    private static double catalogueValue(String quantity, String key) {
        return switch (quantity) {
            case "hose bore" -> ALL.hose(key).boreM().value();
            case "least hose bore" -> ALL.hose(key).boreM().low();
            case "outside diameter" -> value(ALL.hose(key).outsideDiameterM());
            case "bend radius" -> value(ALL.hose(key).minBendRadiusM());
            case "working pressure" -> value(ALL.hose(key).workingPressurePa());
            case "proof pressure" -> value(ALL.hose(key).proofPressurePa());
            case "burst pressure" -> value(ALL.hose(key).burstPressurePa());
            case "highest temperature" -> value(ALL.hose(key).maxTemperatureK());
            case "tube outside diameter" -> dash(key).tubeM().value();
            case "thread major" -> dash(key).threadMajorM().value();
            case "nut hex" -> dash(key).nutHexM().value();
            case "pipe outside diameter" -> pipe(key).pipeM().value();
            case "hand-tight engagement" -> pipe(key).handTightM().value();
            case "effective thread" -> pipe(key).effectiveM().value();
            case "through bore" ->
                ConnectionLookup.bore(ALL, ConnectionLookup.parse(ALL, key)).value();
            case "nipple bore" ->
                ALL.end(ALL.hose(key), "straight", 0).nippleBoreM().value();
            case "least nipple bore" ->
                ALL.end(ALL.hose(key), "straight", 0).nippleBoreM().low();
            case "tube bore", "least bent bore", "allowable pressure" -> tubeValue(quantity, key);
            case "cut-off of one end" -> cutOff(key);
            case "cut-off of a pair" -> 2 * cutOff(key);
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static double value(Figure figure) {
        return Objects.requireNonNull(figure).value();
    }

    private static DashSize dash(String key) {
        return ALL.dashSize(SizeText.dashNumber(key));
    }

    private static TaperPipeSize pipe(String size) {
        return ALL.rows().taperPipe().stream()
                .filter(p -> p.size().equals(size))
                .findFirst()
                .orElseThrow();
    }

    private static double tubeValue(String quantity, String key) {
        int cut = key.lastIndexOf(' ', key.indexOf(" x ") - 1);
        String[] lengths = key.substring(cut + 1).split(" x ", -1);
        TubeSize tube = ALL.tube(key.substring(0, cut), si(number(lengths[0]), "in"), si(number(lengths[1]), "in"));
        return switch (quantity) {
            case "tube bore" -> tube.boreM().value();
            case "least bent bore" -> value(tube.leastBoreBentM());
            default -> value(tube.allowablePressurePa());
        };
    }

    private static double cutOff(String key) {
        String[] parts = key.split(" \\| ", -1);
        return ALL.rows().cutOffs().stream()
                .filter(c -> c.end().equals(parts[0])
                        && c.size().equals(parts[1])
                        && Math.round(Math.toDegrees(c.angleRad())) == Long.parseLong(parts[2]))
                .findFirst()
                .orElseThrow()
                .lengthM()
                .value();
    }

    /** Plain numbers and fractions of an inch, {@code 1-3/8}. */
    private static BigDecimal number(String text) {
        BigDecimal sum = BigDecimal.ZERO;
        for (String piece : text.split("-", -1)) {
            int slash = piece.indexOf('/');
            sum = sum.add(
                    slash < 0
                            ? new BigDecimal(piece)
                            : new BigDecimal(piece.substring(0, slash))
                                    .divide(new BigDecimal(piece.substring(slash + 1)), MathContext.DECIMAL64));
        }
        return sum;
    }

    private static double si(BigDecimal value, String unit) {
        return switch (unit) {
            case "mm" -> value.movePointLeft(3).doubleValue();
            case "in" -> value.multiply(new BigDecimal("0.0254")).doubleValue();
            case "MPa" -> value.movePointRight(6).doubleValue();
            case "C" -> value.add(new BigDecimal("273.15")).doubleValue();
            default -> throw new IllegalArgumentException(unit);
        };
    }
}
