package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.study.kit.Kit;
import org.linedrop.study.kit.KitItem;
import org.linedrop.study.kit.OwnFigures;
import org.linedrop.units.Display;

/** The kit of an invented car as it is printed, and the list of prices as it is read. */
class KitOutputTest {
    private static final Path HERE = Path.of("src/test/resources/org/linedrop/kit");
    private static final Kit CAR = car();

    private static List<Circuit> circuits() {
        List<Circuit> circuits = new ArrayList<>();
        for (String name : List.of("fuel", "oil", "coolant")) {
            try {
                circuits.add(CircuitFile.read(HERE.resolve(name + ".yaml")));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return circuits;
    }

    private static Kit car() {
        try {
            return Kit.of(circuits(), PriceForm.read(Files.readString(HERE.resolve("prices.csv")), "prices.csv"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void kitOfTheCar() {
        Golden.same("../kit/car.txt", KitReport.text(CAR, Display.METRIC));
        Golden.same("../kit/car.us.txt", KitReport.text(CAR, Display.US));
        Golden.sameToNineDigits("../kit/car.csv", KitReport.csv(CAR, KitReport.Rows.PARTS, Display.METRIC));
        Golden.sameToNineDigits("../kit/hoses.csv", KitReport.csv(CAR, KitReport.Rows.HOSES, Display.METRIC));
    }

    @Test
    void theSameFiguresStandInTextCsvAndJson() {
        String text = KitReport.text(CAR, Display.METRIC);
        String csv = KitReport.csv(CAR, KitReport.Rows.PARTS, Display.METRIC);
        Map<String, Object> json = Json.object(KitReport.json(CAR));
        List<Map<String, Object>> parts = Json.objects(json, "parts");
        assertThat(parts).hasSameSizeAs(CAR.items());
        for (int i = 0; i < parts.size(); i++) {
            KitItem item = CAR.items().get(i);
            Map<String, Object> part = parts.get(i);
            assertThat(part.get("item")).isEqualTo(item.item());
            assertThat(((Number) part.get("pieces")).intValue()).isEqualTo(item.count());
            String line = text.lines()
                    .filter(each -> each.startsWith(item.item() + " "))
                    .findFirst()
                    .orElseThrow();
            assertThat(line).contains(" " + item.count() + " ");
            String record = csv.lines()
                    .filter(each ->
                            each.contains("," + item.item() + ",") || each.contains(",\"" + item.item() + "\","))
                    .findFirst()
                    .orElseThrow();
            assertThat(record).contains("," + item.count() + ",");
            if (item.byLength()) {
                double length = ((Number) part.get("lengthM")).doubleValue();
                assertThat(length).isEqualTo(item.lengthM());
                assertThat(line).contains(KitColumns.LENGTH.number(length, Display.METRIC));
                assertThat(record).contains(KitColumns.LENGTH.exact(length, Display.METRIC));
            }
            if (!Double.isNaN(item.cost())) {
                double cost = ((Number) part.get("cost")).doubleValue();
                assertThat(line).endsWith(KitColumns.money(cost));
                assertThat(record).contains(Scale.PURE.exact(cost, Display.METRIC));
            }
        }
        @SuppressWarnings("unchecked")
        Map<String, Object> totals = (Map<String, Object>) json.get("totals");
        assertThat(text)
                .contains(((Number) totals.get("joints")).intValue() + " joints can leak")
                .contains(KitColumns.money(((Number) totals.get("cost")).doubleValue()) + " EUR");
        String flat = String.join(" ", text.lines().map(String::strip).toList());
        @SuppressWarnings("unchecked")
        List<String> sentences = (List<String>) json.get("sentences");
        assertThat(sentences)
                .isNotEmpty()
                .allSatisfy(sentence -> assertThat(flat).contains(sentence));
        assertThat(csv)
                .contains("total,joints," + ((Number) totals.get("joints")).intValue() + ",")
                .contains("total,sealing faces," + ((Number) totals.get("faces")).intValue() + ",");
    }

    @Test
    void everyExampleFitsThePage() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String directory : List.of("src/examples", "src/test/resources/org/linedrop/report")) {
            try (Stream<Path> all = Files.list(Path.of(directory))) {
                all.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(files::add);
            }
        }
        assertThat(files).hasSizeGreaterThan(7);
        for (Path file : files) {
            Circuit circuit;
            try {
                circuit = CircuitFile.read(file);
            } catch (ProblemsException wrong) {
                continue; // a file of mistakes
            }
            Kit kit = Kit.of(List.of(circuit), OwnFigures.NONE);
            for (Display display : List.of(Display.METRIC, Display.US)) {
                String text = KitReport.text(kit, display);
                assertThat(text.lines())
                        .as(file.toString())
                        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120))
                        .allSatisfy(line -> assertThat(line).doesNotEndWith(" "));
                assertThat(text)
                        .as(file.toString())
                        .doesNotContain("NaN", "Infinity", "null")
                        .endsWith(String.join("\n", Safety.lines()) + "\n");
            }
            assertThat(KitReport.json(kit)).doesNotContain("NaN");
        }
    }

    @Test
    void brakesGetNoVerdict() throws IOException {
        Kit kit = Kit.of(
                List.of(CircuitFile.read(Path.of("src/test/resources/org/linedrop/report/brake.yaml"))),
                OwnFigures.NONE);
        assertThat(KitReport.text(kit, Display.METRIC))
                .contains("0.40 m of hose")
                .doesNotContain("TOO", "cut", "Tools", "When making it up", "clocking", "spanner");
    }

    @Test
    void theFormIsReadBack() {
        for (Display display : List.of(Display.METRIC, Display.US)) {
            String form = PriceForm.empty(CAR.items(), display);
            OwnFigures own = PriceForm.read(form, "form.csv");
            assertThat(own.rows().stream().map(OwnFigures.Row::item))
                    .containsExactlyElementsOf(
                            CAR.items().stream().map(KitItem::item).toList());
            assertThat(own.rows()).allSatisfy(row -> assertThat(row.price()).isNaN());
        }
    }

    @Test
    void figuresAreReadInTheirUnits() {
        OwnFigures own = PriceForm.read(
                "\uFEFFitem,per,price USD,mass lb,cut-off in\r\nrace PTFE -6,ft,3.048,0.1,\r\n\"hose end straight, race PTFE"
                        + " -6\",piece,9,,0.81\r\n",
                "mine.csv");
        assertThat(own.currency()).isEqualTo("USD");
        assertThat(own.rows().get(0).price()).isCloseTo(10.0, within(1e-12));
        // 0.1 lb/ft, from the definitions of pound and foot
        assertThat(own.rows().get(0).mass()).isCloseTo(0.045359237 / 0.3048, within(1e-12));
        assertThat(own.rows().get(1).cutOffM()).isCloseTo(0.81 * 0.0254, within(1e-15));
        assertThat(own.rows().get(1).mass()).isNaN();
    }

    @Test
    void priceOfAPieceIsNoPriceOfALength() {
        OwnFigures own = PriceForm.read("item,per,price\nrace PTFE -8,piece,20\nunion -10,m,6\n", "mine.csv");
        List<Circuit> circuits = circuits();
        assertThatThrownBy(() -> Kit.of(circuits, own))
                .hasMessageContaining("race PTFE -8: it is sold by length, but its line says per piece. Write m or ft")
                .hasMessageContaining("union -10: it is sold by the piece");
        // without a word it is of what the thing is sold by
        Kit kit = Kit.of(circuits, PriceForm.read("item,price\nrace PTFE -8,20\nunion -10,6\n", "mine.csv"));
        assertThat(kit.cost()).isCloseTo(20 * 2.30 + 6, within(1e-9));
    }

    @Test
    void littleSlackIsSaid() {
        Circuit fuel = circuits().get(0).with(List.of(Change.of("left leg 1", "length", "0.52 m")));
        assertThat(KitReport.text(Kit.of(List.of(fuel), OwnFigures.NONE), Display.METRIC))
                .contains("LITTLE SLACK: left leg 1 has 4 % over its path; 5 to 8 % is usual");
        Circuit shorter = fuel.with(List.of(Change.of("left leg 1", "length", "0.49 m")));
        assertThat(KitReport.text(Kit.of(List.of(shorter), OwnFigures.NONE), Display.METRIC))
                .contains("TOO SHORT: left leg 1 is 490 mm overall, its path by its way-points 500 mm.");
    }

    @Test
    void mistakesInTheListAreSaidAllAtOnce() {
        assertThatThrownBy(() -> PriceForm.read(
                        "item,per,price EUR,mass kg,cut-off mm\nhose,m,\"12,50\",heavy,\nhose,yard,1,,\n", "mine.csv"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("mine.csv:2  price \"12,50\" is no number. A comma is not a decimal point here:"
                        + " write 12.50")
                .hasMessageContaining("mine.csv:2  mass \"heavy\" is no number")
                .hasMessageContaining("mine.csv:3  per \"yard\" is neither piece nor a length")
                .hasMessageContaining("mine.csv:3  \"hose\" is given twice");
        assertThatThrownBy(() -> PriceForm.read("item;per;price\n", "mine.csv"))
                .hasMessageContaining("not parted by commas");
        assertThatThrownBy(() -> PriceForm.read("item,weight kg\n", "mine.csv"))
                .hasMessageContaining("no column is called \"weight kg\"");
        assertThatThrownBy(() -> PriceForm.read("item,mass\n", "mine.csv")).hasMessageContaining("needs its unit");
        assertThatThrownBy(() -> PriceForm.read("per,price\n", "mine.csv")).hasMessageContaining("no column \"item\"");
        assertThatThrownBy(() -> PriceForm.read("", "mine.csv")).hasMessageContaining("empty");
    }
}
