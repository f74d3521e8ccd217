package org.linedrop.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DrawingTest {
    /** Relative luminance, Web Content Accessibility Guidelines 2. */
    private static double luminance(String colour) {
        double sum = 0;
        double[] weights = {0.2126, 0.7152, 0.0722};
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static double contrast(String light, String dark) {
        return (luminance(light) + 0.05) / (luminance(dark) + 0.05);
    }

    @Test
    void sharesCanBeToldApartWithoutColour() {
        List<String> steps = Shades.steps();
        for (int i = 1; i < steps.size(); i++) {
            assertThat(contrast(steps.get(i - 1), steps.get(i)))
                    .as(steps.get(i - 1) + " against " + steps.get(i))
                    .isGreaterThan(1.45);
        }
        assertThat(steps).hasSameSizeAs(Shades.words());
    }

    @Test
    void lettersStandOutFromThePage() {
        for (String colour : List.of(Shades.INK, Shades.MUTED, Shades.LIMIT, Shades.GIVEN)) {
            assertThat(contrast(Shades.PAPER, colour)).as(colour).isGreaterThan(4.5);
        }
        assertThat(contrast(Shades.WASH, Shades.MUTED)).isGreaterThan(4.5);
    }

    @Test
    void coloursOfSharesChangeWhereTheirWordsSay() {
        assertThat(Shades.ofShare(0.0199)).isEqualTo(Shades.steps().get(0));
        assertThat(Shades.ofShare(0.02)).isEqualTo(Shades.steps().get(1));
        assertThat(Shades.ofShare(0.149)).isEqualTo(Shades.steps().get(2));
        assertThat(Shades.ofShare(0.15)).isEqualTo(Shades.steps().get(3));
        assertThat(Shades.ofShare(1)).isEqualTo(Shades.steps().get(4));
        assertThat(Shades.ofShare(Double.NaN)).isEqualTo(Shades.steps().get(0));
    }

    @Test
    void marksAreRoundInsideAndNotTooMany() {
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            double low = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 3);
            double high = low + Math.pow(10, random.nextDouble() * 8 - 3);
            Axis axis = Axis.around(low, high, 1e-9, 100, 500);
            int most = 2 + random.nextInt(7);
            List<Double> marks = axis.marks(most);
            assertThat(marks.size()).isLessThanOrEqualTo(most + 1);
            List<String> texts =
                    marks.stream().map(mark -> axis.text(mark, most)).toList();
            assertThat(texts).doesNotHaveDuplicates();
            for (int k = 0; k < marks.size(); k++) {
                double mark = marks.get(k);
                assertThat(axis.at(mark)).isBetween(100.0, 500.0);
                assertThat(Double.parseDouble(texts.get(k)))
                        .isCloseTo(mark, org.assertj.core.data.Offset.offset(1e-6 * (high - low)));
            }
        }
    }

    @Test
    void wrappedTextKeepsItsRoomAndItsWords() {
        String text = "old hard line 3.90 m, 5/16 x 0.028: 25.16 kPa, 51 %";
        List<String> lines = Lettering.wrap(text, 110, 11, 9);
        assertThat(String.join(" ", lines)).isEqualTo(text);
        assertThat(lines)
                .allSatisfy(line -> assertThat(Lettering.width(line, 11)).isLessThanOrEqualTo(110));
        List<String> cut = Lettering.wrap(text, 110, 11, 2);
        assertThat(cut).hasSize(2);
        assertThat(cut.get(1)).endsWith("\u2026");
        assertThat(Lettering.wrap("x".repeat(200), 50, 11, 3).get(0)).endsWith("\u2026");
        assertThat(Lettering.cut("\ud83d\udd27\ud83d\udd27\ud83d\udd27", 30, 12))
                .doesNotMatch(".*[\ud800-\udbff]$");
    }

    @Test
    void joinedPlacesNeverShareARow() {
        Random random = new Random(12);
        for (int i = 0; i < 500; i++) {
            int places = 2 + random.nextInt(9);
            boolean known = random.nextBoolean();
            List<Grid.Spot> spots = new ArrayList<>();
            List<Grid.Join> joins = new ArrayList<>();
            for (int n = 0; n < places; n++) {
                boolean here = known && random.nextInt(5) > 0;
                spots.add(
                        here
                                ? new Grid.Spot(random.nextInt(4), random.nextInt(3) - 1)
                                : new Grid.Spot(Double.NaN, Double.NaN));
                if (n > 0) {
                    joins.add(new Grid.Join(random.nextInt(n), n));
                }
            }
            for (int n = random.nextInt(4); n > 0; n--) {
                int from = random.nextInt(places);
                int to = random.nextInt(places);
                if (from != to) {
                    joins.add(new Grid.Join(from, to));
                }
            }
            Grid grid = Grid.of(spots, joins);
            for (Grid.Join join : joins) {
                assertThat(grid.row(join.from())).as(joins.toString()).isNotEqualTo(grid.row(join.to()));
            }
            int[] counted = new int[grid.rows()];
            List<String> cells = new ArrayList<>();
            for (int n = 0; n < places; n++) {
                counted[grid.row(n)]++;
                cells.add(grid.row(n) + "/" + grid.across(n));
            }
            assertThat(cells).doesNotHaveDuplicates();
            for (int r = 0; r < grid.rows(); r++) {
                assertThat(grid.count(r)).isEqualTo(counted[r]).isPositive();
            }
        }
    }

    @Test
    void frontIsOnTopAndLeftIsLeft() {
        List<Grid.Spot> spots = List.of(new Grid.Spot(0, 0), new Grid.Spot(2.9, -0.3), new Grid.Spot(2.9, 0.3));
        Grid grid = Grid.of(spots, List.of(new Grid.Join(0, 1), new Grid.Join(0, 2)));
        assertThat(grid.placed()).isTrue();
        assertThat(grid.row(0)).isEqualTo(1);
        assertThat(grid.row(1)).isZero();
        assertThat(grid.across(2)).isLessThan(grid.across(1));
    }

    @Test
    void withoutPlacesFluidRunsDownThePage() {
        List<Grid.Spot> spots = java.util.Collections.nCopies(4, new Grid.Spot(Double.NaN, Double.NaN));
        List<Grid.Join> joins =
                List.of(new Grid.Join(0, 1), new Grid.Join(1, 2), new Grid.Join(1, 3), new Grid.Join(2, 0));
        Grid grid = Grid.of(spots, joins);
        assertThat(grid.placed()).isFalse();
        assertThat(List.of(grid.row(0), grid.row(1), grid.row(2), grid.row(3))).containsExactly(0, 1, 2, 2);
    }
}
