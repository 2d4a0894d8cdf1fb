package org.nextpull.report.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/** Small pieces that all documents share: schema, rounding, null for what the data cannot support. */
final class Json {
    static final int SCHEMA = 1;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    static ObjectNode document() {
        return object().put("schema", SCHEMA);
    }

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** Puts a number rounded to a count of places; JSON never carries digits that nobody measured. */
    static void put(ObjectNode node, String key, double value, int places) {
        node.put(key, BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN));
    }

    static void put(ObjectNode node, String key, OptionalDouble value, int places) {
        if (value.isPresent()) {
            put(node, key, value.getAsDouble(), places);
        } else {
            node.putNull(key);
        }
    }

    static void put(ObjectNode node, String key, Optional<Double> value, int places) {
        value.ifPresentOrElse(number -> put(node, key, number, places), () -> node.putNull(key));
    }

    static void putText(ObjectNode node, String key, Optional<String> value) {
        value.ifPresentOrElse(text -> node.put(key, text), () -> node.putNull(key));
    }

    /** Over several lines, for a document of its own. */
    static String pretty(JsonNode node) {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of values always has a text", impossible);
        }
    }

    /** On one line, for a stream of objects. */
    static String line(JsonNode node) {
        return node.toString();
    }
}
