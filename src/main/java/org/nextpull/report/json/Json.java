package org.nextpull.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializable;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.jsontype.TypeSerializer;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.POJONode;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

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

    /** The same, written as it is made. */
    static void pretty(JsonNode node, Writer out) throws IOException {
        MAPPER.writerWithDefaultPrettyPrinter()
                .without(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .writeValue(out, node);
    }

    /** An array whose nodes are made one by one when it is written: those of ten thousand pulls do not fit in memory together. */
    static <T> JsonNode array(List<T> of, Function<T, ObjectNode> node) {
        return new POJONode(new JsonSerializable.Base() {
            @Override
            public void serialize(JsonGenerator out, SerializerProvider provider) throws IOException {
                out.writeStartArray();
                for (T one : of) {
                    node.apply(one).serialize(out, provider);
                }
                out.writeEndArray();
            }

            @Override
            public void serializeWithType(JsonGenerator out, SerializerProvider provider, TypeSerializer type)
                    throws IOException {
                serialize(out, provider);
            }
        });
    }

    /** On one line, for a stream of objects. */
    static String line(JsonNode node) {
        return node.toString();
    }
}
