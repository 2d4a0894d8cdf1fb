package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.Role;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

class SpellingsTest {
    private final Spellings spellings = Spellings.load();
    private final HeaderReader reader = new HeaderReader(spellings);

    @ParameterizedTest
    @EnumSource
    void everyRoleHasASpelling(Role role) {
        assertThat(spellings.longestFirst()).anyMatch(spelling -> spelling.role() == role);
    }

    static Stream<Spellings.Spelling> all() {
        return Spellings.load().longestFirst().stream();
    }

    /** A spelling may stand at two roles only where their units tell them apart. */
    @Test
    void aSpellingThatMeansTwoChannelsIsToldApartByItsUnit() {
        for (Spellings.Spelling spelling : spellings.longestFirst()) {
            List<Quantity> quantities = spellings.longestFirst().stream()
                    .filter(other -> other.compact().equals(spelling.compact()))
                    .map(other -> other.role().quantity())
                    .toList();
            assertThat(quantities).as(spelling.compact()).doesNotHaveDuplicates();
        }
    }

    /** Each spelling with each unit of its quantity, in brackets and behind the name, is read as that channel in that unit. */
    @ParameterizedTest
    @MethodSource("all")
    void everySpellingIsReadWithEachUnitOfItsQuantity(Spellings.Spelling spelling) {
        Quantity quantity = spelling.role().quantity();
        if (spelling.role().isText() || quantity == Quantity.COUNT) {
            return;
        }
        Arrays.stream(Unit.values())
                .filter(unit -> unit.quantity() == quantity && unit != Unit.FRACTION)
                .forEach(unit -> {
                    String header = spelling.compact() + " [" + unit.symbol() + "]";
                    HeaderReader.HeaderName name = reader.read(header, Optional.empty());
                    assertThat(name.meanings()).as(header).anySatisfy(meaning -> {
                        assertThat(meaning.role()).isEqualTo(spelling.role());
                        assertThat(meaning.unit()).contains(unit);
                    });
                });
    }

    @ParameterizedTest
    @CsvFileSource(resources = "headers.csv", delimiter = '|')
    void namesThatAreSpeltInNoUsualWayAreReadByTheirWords(String header, String role, String unit) {
        headersAreReadAsLoggersWriteThem(header, role, unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Torque (lb-ft) | torque | lbf.ft",
                "torque_nm | torque | N.m",
                "TQ_ftlb | torque | lbf.ft",
                "Torque, Nm | torque | N.m",
                "Torque / N.m | torque | N.m",
                "Torque in Nm | torque | N.m",
                "Nm | torque | N.m",
                "M_d [Nm] | torque | N.m",
                "Engine Speed [rpm] | engine_speed | rpm",
                "n [1/min] | engine_speed | rpm",
                "RPM | engine_speed | rpm",
                "Engine RPM x1000 | engine_speed | krpm",
                "Speed (km/h) | road_speed | km/h",
                "Speed (rpm) | engine_speed | rpm",
                "Lambda 1 | lambda | lambda",
                "Wideband AFR | air_fuel_ratio | ",
                "Lambda [AFR] | air_fuel_ratio | AFR",
                "EGT Cyl 3 (°C) | exhaust_temperature | degC",
                "IAT °F | inlet_air_temperature | degF",
                "CoolantTemp_C | coolant_temperature | degC",
                "ECU_EngineSpeed | engine_speed | ",
                "kW | power | kW",
                "Power (PS) | power | PS",
                "Leistung [kW] | power | kW",
                "Baro (inHg) | barometer | inHg",
                "rel. humidity % | humidity | %",
                "Inj Duty (%) | injector_duty | %",
                "Fuel flow (kg/h) | fuel_flow | kg/h",
                "Fuel pressure (bar) | fuel_pressure | bar",
                "MAP kPa | manifold_pressure | kPa",
                "Roller Speed (rpm) | roller_speed | rpm",
                "Target AFR | unused | ",
                "Lambda setpoint | unused | ",
                "Correction factor | unused | ",
                "Min torque (Nm) | unused | ",
                "Notes | unused | ",
                "2500 | unused | ",
            })
    void headersAreReadAsLoggersWriteThem(String header, String role, String unit) {
        HeaderReader.HeaderName name = reader.read(header, Optional.empty());
        assertThat(name.isKnown() ? name.meanings().get(0).role().id() : "unused")
                .isEqualTo(role);
        if (name.isKnown()) {
            assertThat(name.meanings().get(0).unit().map(Unit::symbol)).isEqualTo(Optional.ofNullable(unit));
        }
    }

    @Test
    void aWholeLineOfNamesIsNoName() {
        assertThat(reader.read("water ".repeat(16), Optional.empty()).isKnown()).isTrue();
        assertThat(reader.read("water ".repeat(20), Optional.empty()).isKnown()).isFalse();
    }

    @Test
    void theHandbookListsEverySpellingOfTheTable() throws IOException {
        String page = Files.readString(Path.of("src/site/markdown/reading-logs.md"));
        Files.readAllLines(Path.of("src/main/resources/org/nextpull/intake/spellings.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.substring(line.indexOf(':') + 1))
                .flatMap(line -> Stream.of(line.split("\\|", -1)))
                .forEach(spelling -> assertThat(page)
                        .contains(spelling.strip().replace("!", "").replace("~", "")));
    }
}
